"""Who has a keyboard needs nothing else to measure."""

import re

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.newcomers import somebody
from tests.journeys.people import SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.findings import Findings
from tests.journeys.screens.measure import Measure


def test_a_reading_is_typed_and_saved_without_touching_the_screen(settled):
    page = settled(SURGEON).page
    steps.enter_patient(page, somebody())
    Case(page).foot.get_by_text("Measure").focus()
    page.keyboard.press("Enter")
    measure = Measure(page)
    measure.arrive()
    measure.foot.get_by_text("Measure primary, distance").focus()
    page.keyboard.press("Enter")
    expect(measure.pad).to_be_visible()

    for key in ("e", "3", "7", "Enter", "x", "1", "2"):
        page.keyboard.press(key)
    expect(measure.pad).to_have_accessible_name(re.compile("primary, near"))
    page.keyboard.press("Escape")
    measure.foot.get_by_text("Save measurements").focus()
    page.keyboard.press("Enter")

    Findings(page).arrive()
    expect(page.get_by_text(re.compile(r"Esodeviation 37\s*Δ at distance")).first).to_be_visible()
    expect(page.get_by_text(re.compile(r"Exodeviation 12\s*Δ at near")).first).to_be_visible()
