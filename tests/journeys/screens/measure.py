"""Measuring: the gaze map, and the pad of the place that is open."""

import re

from playwright.sync_api import Locator

from tests.journeys.screens.frame import Frame


class Measure(Frame):
    TITLE = re.compile("^(Measure|Correct or add)$")

    def begin(self) -> None:
        """Opens the first place."""
        self.step("Measure primary, distance")

    def direction(self, word: str) -> None:
        self.pad.get_by_role("button", name=word, exact=True).click()

    def figure(self, prism_pd: int) -> None:
        """One of the usual steps, in one touch."""
        self.pad.get_by_role("button", name=f"{prism_pd} prism dioptres", exact=True).click()

    def read(self, word: str, prism_pd: int) -> None:
        self.direction(word)
        self.figure(prism_pd)

    def next(self) -> None:
        """To the place that offers itself."""
        self.step(re.compile("^Next:"))

    def done(self) -> None:
        """Closes the pad, wherever the usual order stands."""
        self.page.keyboard.press("Escape")

    def save(self) -> None:
        self.step(re.compile("^Save (measurements|the correction)$"))

    @property
    def pad(self) -> Locator:
        return self.page.get_by_role("region", name=re.compile("^Reading:"))

    @property
    def said(self) -> Locator:
        """What the pad asks for or refuses, between the directions and the figures."""
        return self.pad.get_by_role("status").filter(has_not=self.page.get_by_role("status")).last

    def place(self, name: str) -> Locator:
        """A place on the map, which says what was read there."""
        return self.page.get_by_role("group", name=re.compile("^Gaze map")).get_by_role(
            "button", name=re.compile(f"^{name}[, ]")
        )

    def exact(self, digits: str) -> None:
        """Digit by digit, for a figure that is no usual step."""
        turn = self.pad.get_by_role("button", name="Exact figure")
        if turn.is_visible():
            turn.click()
        keys = self.pad.get_by_role("group", name="exact figure")
        for digit in digits:
            keys.get_by_role("button", name=digit, exact=True).click()
