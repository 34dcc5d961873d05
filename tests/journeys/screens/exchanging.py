"""Records to and from other systems, and old cases from a notebook."""

import re
from pathlib import Path

from playwright.sync_api import Locator, expect

from tests.journeys.screens.frame import Frame
from tests.journeys.screens.ready_file import ReadyFile


class Exchange(Frame):
    TITLE = "Exchange"


class Export(ReadyFile):
    TITLE = re.compile(f"^(Export as FHIR|{ReadyFile.READY})$")

    def make(self) -> None:
        self.page.get_by_role("checkbox", name=re.compile("I may give these records away")).check()
        super().make()


class Import(Frame):
    TITLE = "Import from FHIR"

    def choose(self, file: Path) -> None:
        self.page.get_by_label("A FHIR file").set_input_files(file)
        expect(self.page.get_by_role("heading", name="What the file holds")).to_be_visible()

    def count(self, fate: str) -> Locator:
        return self.page.locator(".fact").filter(has_text=fate).locator("dd")


class Imported(Frame):
    TITLE = "Imported"

    def undo(self) -> None:
        self.page.get_by_role("button", name="Undo this import").click()


class TakenBack(Frame):
    TITLE = "Taken back"


class Notebook(Frame):
    TITLE = "Old cases from a notebook"

    def empty_table(self, folder: Path) -> Path:
        with self.page.expect_download() as download:
            self.page.get_by_role("button", name="Save an empty table").click()
        path = folder / download.value.suggested_filename
        download.value.save_as(path)
        return path

    def choose(self, file: Path) -> None:
        self.page.get_by_label("Your table").set_input_files(file)

    @property
    def carried_over(self) -> Locator:
        return self.page.get_by_role("region", name="Carried over", exact=True)

    def undo(self, reason: str) -> None:
        self.page.get_by_role("button", name="Take back", exact=True).click()
        dialog = self.page.get_by_role("dialog")
        dialog.get_by_label("Reason").fill(reason)
        dialog.get_by_role("button", name="Take back this import").click()
