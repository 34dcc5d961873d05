"""After an operation: who is to be seen, a visit, and the course."""

import re

from playwright.sync_api import Locator, expect

from tests.journeys.screens.frame import Frame


def _clear_of_the_foot(place: Locator) -> None:
    """The steps at the foot lie over what stands at the lower edge."""
    place.evaluate("each => each.scrollIntoView({block: 'center'})")


class Visits(Frame):
    TITLE = "Visits"

    def group(self, title: str) -> Locator:
        return self.page.get_by_role("region", name=title, exact=True)

    def entry(self, title: str, name: str) -> Locator:
        """A patient in one of the groups."""
        return self.group(title).get_by_role("article", name=name, exact=True)

    def record(self, title: str, name: str) -> None:
        entry = self.entry(title, name)
        expect(entry).to_be_visible()
        entry.get_by_role("link", name="Record a visit").click()


class Visit(Frame):
    TITLE = re.compile("^(Visit|Correct the visit)$")

    def which(self, name: str) -> Locator:
        """One of the visits that it may be."""
        return self.page.get_by_role("group", name="Which visit is it?").get_by_role(
            "radio", name=re.compile(f"^{name}")
        )

    def look_for_infection(self, *signs: str) -> None:
        region = self.page.get_by_role("region", name="Signs of infection")
        looked = region.get_by_role("radio", name="looked for", exact=True)
        _clear_of_the_foot(looked)
        looked.check(force=True)
        for sign in signs:
            button = region.get_by_role("button", name=sign, exact=True)
            _clear_of_the_foot(button)
            button.click()

    def unfold(self, title: str) -> None:
        self.page.get_by_role("group").get_by_text(title, exact=True).click()

    def plan_anew(self, why: str) -> None:
        self.unfold("Visits ahead")
        self.page.get_by_role("button", name="Plan them anew").click()
        self.page.get_by_label("Why they are planned anew").fill(why)

    @property
    def measured(self) -> Locator:
        return self.page.get_by_role("region", name="Measured", exact=True)


class Course(Frame):
    TITLE = "Course"

    @property
    def table(self) -> Locator:
        return self.page.get_by_role("table")

    def line(self, name: str) -> Locator:
        """A line of the table."""
        return self.table.get_by_role("row").filter(has=self.page.get_by_role("rowheader", name=re.compile(f"^{name}")))

    def picture(self, at: str) -> Locator:
        return self.page.get_by_role("img", name=re.compile(f"^Horizontal deviation at {at}"))
