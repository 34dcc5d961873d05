"""A paper card read back by its code."""

import re

from playwright.sync_api import Locator, expect

from tests.journeys.screens.frame import Frame


class Scan(Frame):
    TITLE = re.compile("^(Scan a card|From paper)")

    @property
    def face(self) -> Locator:
        return self.page.get_by_role("article", name="Card", exact=True)

    def again(self) -> None:
        """Puts away the card that was read; the next is looked for at once."""
        read = self.face.element_handle()
        self.step("Scan another")
        read.wait_for_element_state("hidden")

    def found(self, words: str | re.Pattern[str]) -> None:
        """A code was read, and this is said of it."""
        expect(self.page.get_by_text(words).first).to_be_visible()

    def choose_picture(self, name: str, png: bytes) -> None:
        file = {"name": name, "mimeType": "image/png", "buffer": png}
        self.page.get_by_label("Choose a picture of the code").set_input_files(file)
