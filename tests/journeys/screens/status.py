"""Where the work is: what waits, what was refused, what is ready for a day without a network."""

import re

from playwright.sync_api import Locator

from tests.journeys.screens.frame import Frame


class Status(Frame):
    TITLE = "Where your work is"
    READY = "The app opens and calculates without a network."

    def send_and_fetch(self) -> None:
        self.step("Send and fetch now")

    def figure(self, words: str) -> Locator:
        """One of the three: ``62 on this phone``."""
        return (
            self.page.get_by_role("region", name="Records", exact=True).get_by_role("listitem").filter(has_text=words)
        )

    @property
    def protection(self) -> Locator:
        """What the browser promises, and the room."""
        return self.page.get_by_role("region", name=re.compile("^This phone.s storage$"))

    @property
    def refused(self) -> Locator:
        return self.page.get_by_role("region").filter(
            has=self.page.get_by_role("heading", level=2, name="Needs attention")
        )
