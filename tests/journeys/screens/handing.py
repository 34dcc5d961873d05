"""Work from device to device by a file: giving it, and taking it over."""

import re
from pathlib import Path

from playwright.sync_api import Locator, expect

from tests.journeys.screens.frame import Frame
from tests.journeys.screens.ready_file import ReadyFile


class HandOver(ReadyFile):
    TITLE = re.compile(f"^(Hand over by a file|{ReadyFile.READY})$")

    @property
    def words(self) -> str:
        return " ".join(self.page.locator(".hand-words li").all_inner_texts())


class TakeOver(Frame):
    TITLE = "Take over from a file"

    def choose(self, file: Path) -> None:
        self.page.get_by_label("The file").set_input_files(file)
        expect(self.page.get_by_text("Chosen:")).to_be_visible()

    def take(self, words: str) -> None:
        self.page.get_by_label("The six words").fill(words)
        self.step("Take it over")

    @property
    def told(self) -> Locator:
        return self.page.get_by_role("main")

    def taken(self) -> None:
        expect(self.page.get_by_role("heading", level=1, name="Taken over")).to_be_visible()
