"""The options side by side, and one of them in full."""

import re

from playwright.sync_api import Locator, expect

from tests.journeys.screens.frame import Frame


class Options(Frame):
    TITLE = "Options"

    def option(self, title: str) -> Locator:
        return self.page.get_by_role("article", name=title, exact=True)

    def open(self, title: str) -> "Option":
        self.option(title).get_by_role("link", name="Change or choose").click()
        opened = Option(self.page, title)
        opened.arrive()
        return opened

    def choose_table(self, name: str) -> None:
        self.page.get_by_role("group", name="Dose table").get_by_text(name, exact=True).click()


class Option(Frame):
    def __init__(self, page, title: str) -> None:
        super().__init__(page)
        self.TITLE = title

    def dose(self, place: str) -> Locator:
        """The editor of one muscle: ``RIGHT eye, medial rectus``."""
        return self.page.get_by_role("listitem").filter(
            has=self.page.get_by_role("group", name=f"{place}, millimetres")
        )

    def half_more(self, place: str) -> None:
        self.dose(place).get_by_role("button", name="0.5 mm more").click()

    def choose(self) -> None:
        expect(self.foot.get_by_text("Calculating")).to_have_count(0)
        self.step("Choose and sign")


def mm(figure: float) -> re.Pattern[str]:
    """The figure with its unit, whatever space stands between."""
    return re.compile(rf"(?<![\d.]){figure:.1f}\s*mm")
