"""A file that the app has made, ready to be kept or passed on: what all screens that end in one have in common."""

import re
from pathlib import Path

from playwright.sync_api import expect

from tests.journeys.screens.frame import Frame


class ReadyFile(Frame):
    READY = "The file is ready"
    MAKING_MS = 120_000

    def make(self) -> None:
        self.step("Make the file")
        expect(self.page.get_by_role("heading", level=1, name=self.READY)).to_be_visible(timeout=self.MAKING_MS)

    def save(self, folder: Path) -> Path:
        """Keeps the file as the browser's download."""
        with self.page.expect_download() as download:
            self.page.get_by_role("button", name=re.compile("^Save (it|the file)$")).click()
        path = folder / download.value.suggested_filename
        download.value.save_as(path)
        return path
