"""An app that dies in the middle of an entry comes back to that very touch."""

import re

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.newcomers import somebody
from tests.journeys.people import SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.measure import Measure
from tests.journeys.screens.patients import Patients

WRITTEN_WITHIN_MS = 600
"""A draft is promised to be written 300 ms after a touch at the latest; sealing and writing take the rest."""


def begin_to_measure(page) -> Measure:
    """One reading, and of the next only the direction."""
    Case(page).step("Measure")
    measure = Measure(page)
    measure.arrive()
    measure.begin()
    measure.read("eso", 35)
    measure.next()
    measure.direction("exo")
    return measure


def expect_all_there(page, name: str) -> None:
    Unlock(page).enter()
    Patients(page).open(name)
    Case(page).step("Continue measuring")
    measure = Measure(page)
    expect(measure.pad).to_have_accessible_name(re.compile("primary, near"))
    expect(measure.pad.get_by_role("button", name="exo", exact=True)).to_have_attribute("aria-pressed", "true")
    measure.figure(12)
    measure.done()
    expect(measure.place("primary")).to_have_accessible_name(re.compile(r"exo 12\s*Δ.*near"))
    page.get_by_role("radio", name=re.compile("^Distance")).check()
    expect(measure.place("primary")).to_have_accessible_name(re.compile(r"eso 35\s*Δ.*distance"))


def test_a_killed_app_opens_again_with_the_half_typed_reading(lasting):
    phone, known = lasting(SURGEON), somebody()
    steps.enter_patient(phone.page, known)
    begin_to_measure(phone.page)
    phone.page.wait_for_timeout(WRITTEN_WITHIN_MS)

    phone.die()
    phone.switch_on()

    expect_all_there(phone.go(), known.full_name)
