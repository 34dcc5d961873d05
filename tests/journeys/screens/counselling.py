"""What a plan means, for the patient: the page with its language."""

from playwright.sync_api import Locator, expect

from tests.journeys.screens.frame import Frame


class Counselling(Frame):
    TITLE = "For the patient"

    def arrive(self) -> None:
        """The page is there once the engine has made it."""
        super().arrive()
        expect(self.article).to_be_visible()

    @property
    def article(self) -> Locator:
        return self.page.get_by_role("article")

    def read_in(self, name: str, code: str) -> None:
        """Chooses the patient's language and waits for its page."""
        self.page.get_by_role("group", name="Language of the patient").get_by_role("radio", name=name).check(force=True)
        expect(self.page.locator(f"article[lang={code}]")).to_be_visible()
