"""Who is called on each screen, and the patient who is taken along."""

from collections.abc import Callable

from playwright.sync_api import Page

from tests.journeys.screens.patient_form import Details

Visitor = Callable[[str, Page], None]

SOMEBODY = Details(
    full_name="Aleksandrina Montgomery-Featherstonehaugh",
    born=("29", "2", "2016"),
    hospital_number="OI-2016-000-507",
    allergies="penicillin, latex, iodine, chlorhexidine",
)
"""A long name and a long number: what fits for them fits for all."""
