"""Two entries side by side that may be of one person."""

from tests.journeys.screens.frame import Frame


class SamePerson(Frame):
    TITLE = "One person?"

    def join(self, reason: str) -> None:
        self.page.get_by_label("How do you know?").fill(reason)
        self.page.get_by_role("button", name="They are one person").click()
