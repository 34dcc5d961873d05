"""The clinic's lists, one of them, and what they need together."""

import re
from pathlib import Path

from playwright.sync_api import Locator, expect

from tests.journeys.screens.frame import Frame


class Lists(Frame):
    TITLE = "Operating lists"

    def open(self, team: str) -> "DayList":
        self.page.get_by_role("main").get_by_role("link", name=re.compile(team)).click()
        day = DayList(self.page)
        day.arrive()
        return day


class DayList(Frame):
    TITLE = re.compile("^(New list|List: )")

    def day(self, *, on: str, team: str, place: str) -> None:
        self.page.get_by_label("Day", exact=True).fill(on)
        self.page.get_by_label("Team").fill(team)
        self.page.get_by_label("Place").fill(place)

    def add(self, name: str) -> None:
        self.page.get_by_role("button", name="Add an operation").click()
        panel = self.page.get_by_role("dialog")
        panel.get_by_label("Name, number or birth date").fill(name)
        panel.get_by_role("button", name=name).click()
        expect(self.row(name)).to_be_visible()

    def row(self, name: str) -> Locator:
        return self.page.get_by_role("main").get_by_role("listitem", name=name, exact=True)

    @property
    def order(self) -> Locator:
        """The names in operating order."""
        return self.page.locator(".day-name")

    def move(self, name: str, way: str) -> None:
        self.page.get_by_role("button", name=f"{name}: {way}").click()

    def save(self) -> None:
        self.step("Save the list")
        expect(self.foot.get_by_text("PDF and print")).to_be_visible()

    def keep_pdf(self) -> bytes:
        """The bytes of the file that the device makes."""
        self.step("PDF and print")
        with self.page.expect_download() as download:
            self.page.get_by_role("link", name="Keep a copy").click()
        self.page.get_by_role("button", name="Close").click()
        return Path(download.value.path()).read_bytes()


class Packing(Frame):
    TITLE = "What to pack"

    def count(self, article: str) -> Locator:
        """The line of an article in the kit."""
        return self.page.get_by_role("main").get_by_role("listitem").filter(has_text=article)

    def only(self, team: str) -> None:
        """Leave out every list but those of a team."""
        lists = self.page.get_by_role("group", name="For these lists").locator("label")
        expect(lists.filter(has_text=team)).not_to_have_count(0)
        for other in lists.filter(has_not_text=team).get_by_role("checkbox").all():
            other.uncheck()
