"""The signed card, and its PDF."""

import re
from pathlib import Path

from playwright.sync_api import Locator, expect

from tests.journeys.screens.frame import Frame


class Card(Frame):
    TITLE = re.compile("^Card")

    @property
    def face(self) -> Locator:
        return self.page.get_by_role("article", name="Card", exact=True)

    @property
    def lines(self) -> Locator:
        """What is done, a muscle each."""
        return self.face.locator(".card-line")

    @property
    def check_word(self) -> str:
        words = self.page.get_by_text(re.compile(r"^Check word [A-Z]{4} [A-Z]{4}$")).first.inner_text()
        return words.removeprefix("Check word").strip()

    @property
    def signature_id(self) -> str:
        return self.page.url.rpartition("/")[2]

    def arrive(self) -> None:
        super().arrive()
        expect(self.face).to_be_visible()

    def open_pdf(self) -> None:
        self.step(re.compile("^PDF"))
        expect(self.page.get_by_role("link", name="Keep a copy")).to_be_visible()

    def keep_pdf(self) -> bytes:
        """The bytes of the file that the device makes."""
        self.open_pdf()
        with self.page.expect_download() as download:
            self.page.get_by_role("link", name="Keep a copy").click()
        return Path(download.value.path()).read_bytes()
