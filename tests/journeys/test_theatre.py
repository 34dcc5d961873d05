"""The theatre's tablet: signed cards and nothing else."""

import re
from typing import Any

import pytest
from playwright.sync_api import expect

from tests.clinic.pen import Pen
from tests.journeys import steps
from tests.journeys.browser.device import TABLET, Passing
from tests.journeys.browser.watch import Watch
from tests.journeys.people import DEMO, SURGEON, THEATRE
from tests.journeys.screens.card import Card
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.patients import Patients
from tests.journeys.site.post import post_as
from tests.journeys.site.server import running_server


def names_with_a_signature() -> set[str]:
    """From the demo clinic's own file."""
    signed = {record["patient"] for record in DEMO["records"] if record["kind"] == "signature"}
    patients = [record for record in DEMO["records"] if record["kind"] == "patient"]
    return {record["body"]["full_name"] for record in patients if record["patient"] in signed}


def entered_twice(pen: Pen) -> list[dict[str, Any]]:
    """The first of the signed patients once more, with an allergy that stands there alone."""
    name = min(names_with_a_signature())
    known = next(each for each in DEMO["records"] if each["kind"] == "patient" and each["body"]["full_name"] == name)
    other = pen.patient(full_name=f"{name} again", hospital_number="OI-0777", allergies="Penicillin")
    return [other, pen.join(known, other)]


@pytest.fixture(scope="module")
def server(loaded_state, app_build, tmp_path_factory):
    with running_server(loaded_state, app_build, tmp_path_factory.mktemp("theatre")) as server:
        yield server


@pytest.fixture(scope="module")
def tablet(server, browser, playwright):
    """The nurse's, all day."""
    post_as(SURGEON, server, playwright.request.new_context(), entered_twice)
    device = Passing(server, Watch(), browser=browser, kind=TABLET)
    steps.settle_in(device, THEATRE)
    yield device
    device.close()

    assert device.watch.troubles == []


def test_a_theatre_nurse_sees_the_signed_patients_alone_and_opens_a_card(tablet):
    """One of them was entered twice: what the other entry warns of is on the card."""
    page = tablet.go("/patients")
    patients = Patients(page)
    patients.arrive()
    signed = names_with_a_signature()
    assert len(signed) > 1

    entries = page.get_by_role("main").get_by_role("listitem").get_by_role("link")
    expect(entries).to_have_count(len(signed))
    for name in signed:
        expect(patients.entry(name)).to_be_visible()
    expect(page.get_by_text("New patient")).to_have_count(0)

    patients.open(min(signed))
    case = Case(page)
    case.arrive()
    not_theirs = re.compile("^(Measure|Measure again|Options|Sign|Sign the plan)$")
    expect(page.get_by_role("link", name=not_theirs)).to_have_count(0)
    case.open_card()
    card = Card(page)
    card.arrive()
    expect(card.face).to_contain_text("EYE")
    other = card.face.get_by_role("alert").filter(has_text="From this person's other entry")
    expect(other).to_contain_text("Penicillin", timeout=60_000)
    expect(other).to_contain_text("number OI-0777")
    expect(card.banner).to_be_visible()
    assert page.evaluate("() => document.documentElement.dataset.theme") == "dark", "the theatre is dim"


def test_a_card_opens_in_a_theatre_that_has_no_network(tablet, server):
    tablet.go("/patients")
    Patients(tablet.page).arrive()
    steps.ready_for_a_day_without_network(tablet)
    name = min(names_with_a_signature())
    tablet.cut_network()
    server.stop()

    page = tablet.go()
    Unlock(page).enter()
    Patients(page).open(name)
    Case(page).open_card()
    card = Card(page)
    card.arrive()
    expect(card.banner).to_contain_text(name)
    assert re.fullmatch("[A-Z]{4} [A-Z]{4}", card.check_word)

    server.start()
    tablet.reconnect()
