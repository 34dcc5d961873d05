"""Where the work is: what waits, what was refused, what is ready for a day without a network."""

from playwright.sync_api import Locator

from tests.journeys.screens.frame import Frame


class Status(Frame):
    TITLE = "Where your work is"
    READY = "The app opens and calculates without a network."

    def send_and_fetch(self) -> None:
        self.step("Send and fetch now")

    @property
    def refused(self) -> Locator:
        return self.page.get_by_role("region").filter(
            has=self.page.get_by_role("heading", level=2, name="Needs attention")
        )
