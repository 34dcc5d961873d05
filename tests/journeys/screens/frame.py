"""What all screens have in common: the title, the step at the foot, the patient's banner, the storage line."""

import re

from playwright.sync_api import Locator, Page, expect


class Frame:
    """A screen is addressed by what a person reads or a screen reader says, never by how it is built."""

    TITLE: str | re.Pattern[str]

    def __init__(self, page: Page) -> None:
        self.page = page

    def arrive(self) -> None:
        """Waits until this is the screen in view."""
        expect(self.page.get_by_role("heading", level=1, name=self.TITLE)).to_be_visible()

    def step(self, words: str | re.Pattern[str]) -> None:
        """Takes the step at the foot."""
        self.foot.get_by_text(words).click()

    def back(self) -> None:
        self.page.get_by_role("banner").get_by_text("Back", exact=True).click()

    @property
    def foot(self) -> Locator:
        return self.page.get_by_role("contentinfo")

    @property
    def banner(self) -> Locator:
        """Who the patient of this screen is."""
        return self.page.get_by_role("region", name="Patient", exact=True)

    @property
    def storage_line(self) -> Locator:
        return self.page.get_by_role("banner").get_by_role("link").last

    def is_shown(self) -> bool:
        """Whether this is the screen that comes up, once any has."""
        expect(self.page.get_by_role("heading", level=1)).to_be_visible()
        return self.page.get_by_role("heading", level=1, name=self.TITLE).is_visible()
