"""Writing down what was done, a muscle a page; the note that comes of it; and the adjustment of a suture."""

import re
from pathlib import Path

from playwright.sync_api import Locator, expect

from tests.journeys.screens.frame import Frame


class Recording(Frame):
    TITLE = re.compile("^(RIGHT|LEFT) eye, |^Complications$|^Anaesthesia and times$|^Check and save$")

    def at(self, title: str) -> None:
        """Waits for one page of the record."""
        expect(self.page.get_by_role("heading", level=1, name=title, exact=True)).to_be_visible()

    def as_planned(self) -> None:
        self.step(re.compile("^As planned:"))

    def something_else(self) -> None:
        self.page.get_by_role("button", name="Something else was done").click()

    def choose(self, question: str, answer: str) -> None:
        """One of the words of a question, by what is seen."""
        group = self.page.get_by_role("group", name=question, exact=True)
        group.get_by_role("radio", name=re.compile(f"^{answer}")).check(force=True)

    def figure(self, label: str, digits: str, *, within: str = "", direction: str = "") -> None:
        """Opens the pad of a figure and touches it in anew."""
        place = self.page.get_by_role("region", name=within) if within else self.page
        place.get_by_role("button", name=re.compile(f"^{label}")).click()
        pad = self.page.get_by_role("dialog")
        for _ in range(3):
            pad.get_by_role("button", name="erase", exact=True).click()
        if direction:
            pad.get_by_role("button", name=direction, exact=True).click()
        for digit in digits:
            pad.get_by_role("button", name=digit, exact=True).click()
        pad.get_by_role("button", name="Take this figure").click()
        expect(pad).to_have_count(0)

    def say(self, label: str, words: str) -> None:
        self.page.get_by_label(label, exact=True).fill(words)

    def unfold(self, title: str) -> None:
        self.page.get_by_role("group").get_by_text(title, exact=True).click()

    def complication(self, name: str) -> Locator:
        """Adds one and gives its place on the page."""
        self.page.get_by_role("region", name="Add a complication").get_by_role("button", name=name, exact=True).click()
        return self.page.get_by_role("region", name=re.compile(f"^Complication .*: {name}$"))

    def now(self, what: str) -> None:
        self.page.get_by_role("button", name=f"{what}: now", exact=True).click()


class Note(Frame):
    TITLE = "Operation note"

    @property
    def face(self) -> Locator:
        return self.page.get_by_role("article", name="Operation note", exact=True)

    def arrive(self) -> None:
        super().arrive()
        expect(self.face).to_be_visible()

    def keep_pdf(self) -> bytes:
        """The bytes of the file that the device makes."""
        self.step("PDF and print")
        keep = self.page.get_by_role("link", name="Keep a copy")
        expect(keep).to_be_visible()
        with self.page.expect_download() as download:
            keep.click()
        data = Path(download.value.path()).read_bytes()
        self.page.get_by_role("button", name="Close").click()
        return data
