"""The list of patients."""

from playwright.sync_api import Locator

from tests.journeys.screens.frame import Frame


class Patients(Frame):
    TITLE = "Patients"

    def entry(self, name: str) -> Locator:
        return self.page.get_by_role("listitem").get_by_role("link").filter(has_text=name)

    def open(self, name: str) -> None:
        self.entry(name).click()

    def scan(self) -> None:
        self.page.get_by_role("link", name="Scan a card").click()

    def new(self) -> None:
        self.step("New patient")

    def search(self, words: str) -> None:
        self.page.get_by_role("searchbox").fill(words)
