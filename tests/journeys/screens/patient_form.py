"""Entering a patient's details."""

import re
from dataclasses import dataclass

from playwright.sync_api import Locator

from tests.journeys.screens.frame import Frame


@dataclass(frozen=True, kw_only=True)
class Details:
    """``born`` is day, month and year as they are typed."""

    full_name: str
    born: tuple[str, str, str]
    hospital_number: str
    allergies: str = ""


class PatientForm(Frame):
    TITLE = re.compile("^(New patient|Correct details)$")

    def fill(self, details: Details) -> None:
        self.arrive()
        self.field("Full name").fill(details.full_name)
        for label, digits in zip(("Day", "Month", "Year"), details.born, strict=True):
            self.page.get_by_label(label, exact=True).fill(digits)
        self.field("Hospital number").fill(details.hospital_number)
        if details.allergies:
            self.field("Allergies").fill(details.allergies)

    def field(self, label: str) -> Locator:
        return self.page.get_by_role("textbox", name=label)

    def save(self) -> None:
        self.step("Save")
