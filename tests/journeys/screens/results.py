"""What became of operations: groups, figures, charts."""

from playwright.sync_api import Locator, expect

from tests.journeys.screens.frame import Frame


class Results(Frame):
    TITLE = "Results"

    def counted(self) -> None:
        """Waits until every operation was read and the group in view is counted."""
        self.arrive()
        expect(self.page.get_by_role("heading", name="Success by each definition")).to_be_visible()

    def put_together_by(self, words: str) -> None:
        self.page.get_by_role("group", name="Put together by").get_by_role("radio", name=words).check(force=True)

    def number(self, label: str) -> Locator:
        """What stands beside a label."""
        return self.page.locator("dl > div").filter(has=self.page.get_by_text(label)).get_by_role("definition")
