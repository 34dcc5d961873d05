"""How theatre is set up for one plan."""

import re

from playwright.sync_api import Locator, expect

from tests.journeys.screens.frame import Frame


class SetUp(Frame):
    TITLE = "Set-up for theatre"

    def arrive(self) -> None:
        """The sheet is there once the engine has worked it out."""
        super().arrive()
        expect(self.item("The plan in sight")).to_be_visible()

    def item(self, title: str) -> Locator:
        return self.page.get_by_role("main").get_by_role("region", name=title, exact=True)

    def wish(self, question: str, answer: str) -> None:
        """By key, for the radio itself lies under its words."""
        self.page.get_by_role("group", name=question).get_by_role("radio", name=answer, exact=True).check(force=True)

    def block_at(self, clock: str) -> None:
        self.page.get_by_label(re.compile("^When is a local block given")).fill(clock)

    def begin_own_choice(self, title: str) -> Locator:
        """The panel with the ways that may be chosen."""
        self.item(title).get_by_role("button", name="Choose another way").click()
        return self.page.get_by_role("dialog")

    def choose(self, title: str, way: str, reason: str) -> None:
        panel = self.begin_own_choice(title)
        panel.get_by_role("radio", name=way).check(force=True)
        panel.get_by_label("Reason").fill(reason)
        panel.get_by_role("button", name="Take this way").click()
        expect(panel).to_have_count(0)

    def save(self) -> None:
        self.step("Save the set-up")
        expect(self.page.get_by_text(re.compile("^Prepared by"))).to_be_visible()
