"""The whole horizontal examination goes into the phone in less than 40 seconds of touches."""

from playwright.sync_api import expect

from tests.journeys.people import SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.findings import Findings
from tests.journeys.screens.measure import Measure
from tests.journeys.screens.patients import Patients

GIVEN_S = 40.0
TOUCH_S = 1.1 + 1.35
"""To point at a key, and to think of it first: the keystroke-level model of Card, Moran and Newell (1980), from memory,
verify. A practised hand thinks once for several keys; here every single touch is given its thought.
"""
READINGS = (("eso", 40), ("eso", 45), ("eso", 35), ("eso", 50))
"""Distance, near, up, down, in the order in which the app offers them."""


def test_distance_near_up_and_down_take_fewer_touches_than_40_seconds_allow(settled):
    page = settled(SURGEON).page
    Patients(page).open("Wenna Harrowgate")
    page.evaluate("() => { globalThis.touches = 0; addEventListener('pointerdown', () => (touches += 1), true); }")

    Case(page).step("Measure")
    measure = Measure(page)
    measure.begin()
    for index, (word, prism_pd) in enumerate(READINGS):
        if index:
            measure.next()
        measure.read(word, prism_pd)
    measure.step("Done")
    measure.save()
    Findings(page).arrive()

    touches = page.evaluate("() => touches")
    assert touches >= 2 * len(READINGS), "the touches were counted"
    assert touches * TOUCH_S < GIVEN_S
    expect(page.get_by_role("main")).to_contain_text("pattern")
