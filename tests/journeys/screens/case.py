"""One patient's case."""

import re

from playwright.sync_api import Locator

from tests.journeys.screens.frame import Frame


class Case(Frame):
    TITLE = "Case"

    def open_card(self) -> None:
        self.step("Open the card")

    def correct_details(self) -> None:
        self.page.get_by_role("link", name="Correct details").click()

    def take_back_the_signature(self, reason: str) -> None:
        self.page.get_by_role("region", name="Signed plan", exact=True).get_by_role("button", name="Take back").click()
        dialog = self.page.get_by_role("dialog")
        dialog.get_by_role("textbox", name="Reason").fill(reason)
        dialog.get_by_role("button", name=re.compile("^Take back")).click()
        dialog.wait_for(state="hidden")

    @property
    def details(self) -> Locator:
        return self.page.get_by_role("region", name="Details", exact=True)

    @property
    def conflict(self) -> Locator:
        """The versions that two devices made of one thing."""
        return self.page.get_by_role("region", name=re.compile(r"^\d versions of"))

    def settle_for(self, words: str) -> None:
        """Chooses the version that says so."""
        version = self.conflict.get_by_role("article").filter(has_text=words)
        version.get_by_role("button", name="This one is right").click()

    def correct_examination(self) -> None:
        self.page.get_by_role("link", name="Correct or add").first.click()

    def to_options(self) -> None:
        self.page.get_by_role("link", name="Options", exact=True).first.click()
