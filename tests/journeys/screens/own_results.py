"""What a surgeon's own results say of the tables, and beside an option."""

from playwright.sync_api import Locator, expect

from tests.journeys.screens.frame import Frame


class OwnResults(Frame):
    TITLE = "Own results"

    def family(self, title: str) -> Locator:
        return self.page.get_by_role("region", name=title, exact=True)

    def switch_on(self, title: str) -> None:
        """Waits until it is saved: the box shows what the phone's own record says."""
        box = self.family(title).get_by_role("checkbox", name="Show beside the table's dose")
        expect(box).not_to_be_checked()
        box.click()
        expect(box).to_be_checked()


class OwnColumn(Frame):
    """On the screen of one option."""

    @property
    def column(self) -> Locator:
        return self.page.get_by_role("region", name="What your own results say")

    def row(self, place: str) -> Locator:
        return self.column.get_by_role("row").filter(has=self.page.get_by_role("rowheader", name=place))

    def take(self) -> None:
        self.column.get_by_role("button", name="Set the figures of own results").click()
        expect(self.column.get_by_text("These figures are set as yours.")).to_be_visible()
