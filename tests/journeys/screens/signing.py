"""Signing: cautions, the plan drawn again, the signature."""

import re

from playwright.sync_api import Locator, expect

from tests.journeys.screens.frame import Frame


class Signing(Frame):
    TITLE = re.compile("^(Caution|Draw the plan again|Drawing and plan differ|Sign the plan)$")

    def read_cautions(self) -> int:
        """Acknowledges one after another; how many there were."""
        count = 0
        self.arrive()
        while self.page.get_by_role("heading", level=1, name="Caution", exact=True).is_visible():
            count += 1
            number = self.page.get_by_text(re.compile(rf"^Caution {count} of \d+"))
            expect(number).to_be_visible()
            self.step("I have read this caution")
            expect(number).to_have_count(0)
        return count

    def draw(self, eye: str, muscle: str, operation: str) -> None:
        self.page.get_by_role("button", name=re.compile(f"^{eye}, {muscle}: ")).click()
        self.page.get_by_role("group", name=f"{eye}, {muscle}").get_by_role("radio", name=operation, exact=True).check()

    def compare(self) -> None:
        self.step("Compare with the plan")

    def draw_again(self) -> None:
        self.step("Draw again")

    def sign(self) -> None:
        expect(self.page.get_by_text("Your drawing equals the plan.")).to_be_visible()
        self.step(re.compile("^Sign$"))

    def only_in(self, whose: str) -> Locator:
        """``Your drawing`` or ``The plan``, where the two differ."""
        return self.page.get_by_role("region", name=whose, exact=True)
