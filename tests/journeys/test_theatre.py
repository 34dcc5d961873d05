"""The theatre's tablet: signed cards and nothing else."""

import re
from typing import Any

from playwright.sync_api import expect

from tests.clinic.pen import Pen
from tests.journeys import steps
from tests.journeys.browser.device import TABLET
from tests.journeys.newcomers import hospital_number
from tests.journeys.people import SURGEON, THEATRE
from tests.journeys.screens.card import Card
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.patients import Patients
from tests.journeys.site.server import Server

LIKE = "Tolvi Maresk"
"""Of the demo clinic."""


def names(server: Server, *, signed: bool) -> set[str]:
    """Of the patients with a signature, or of those without."""
    ledger = server.ledger()
    with_signature = {record.patient for record in ledger if record.kind == "signature"}
    patients = {record.patient: record.body["full_name"] for record in ledger if record.kind == "patient"}
    return {name for patient, name in patients.items() if (patient in with_signature) == signed}


def test_a_theatre_nurse_sees_the_signed_patients_alone_and_opens_a_card(settled, shared_server, sign_anew, post):
    """One of them was entered twice: what the other entry warns of is on the card."""
    known, *_ = sign_anew(LIKE, full_name="Idunn Kasparova")
    other_number = hospital_number()

    def entered_twice(pen: Pen) -> list[dict[str, Any]]:
        other = pen.patient(full_name="I. Kasparova", hospital_number=other_number, allergies="Penicillin")
        return [other, pen.join(known, other)]

    post(SURGEON, entered_twice)
    signed = names(shared_server, signed=True)
    assert len(signed) > 1
    assert names(shared_server, signed=False)

    page = settled(THEATRE, TABLET).page
    patients = Patients(page)
    entries = page.get_by_role("main").get_by_role("listitem").get_by_role("link")
    expect(entries).to_have_count(len(signed))
    for name in signed:
        expect(patients.entry(name)).to_be_visible()
    expect(page.get_by_text("New patient")).to_have_count(0)

    patients.open("Idunn Kasparova")
    case = Case(page)
    case.arrive()
    not_theirs = re.compile("^(Measure|Measure again|Options|Sign|Sign the plan)$")
    expect(page.get_by_role("link", name=not_theirs)).to_have_count(0)
    case.open_card()
    card = Card(page)
    card.arrive()
    expect(card.face).to_contain_text("EYE")
    other = card.face.get_by_role("alert").filter(has_text="From this person's other entry")
    expect(other).to_contain_text("Penicillin")
    expect(other).to_contain_text(f"number {other_number}")
    expect(card.banner).to_be_visible()
    assert page.evaluate("() => document.documentElement.dataset.theme") == "dark", "the theatre is dim"


def test_a_card_opens_in_a_theatre_that_has_no_network(settled, shared_server, sign_anew):
    name = "Tekla Sandoval"
    sign_anew(LIKE, full_name=name)
    tablet = settled(THEATRE, TABLET)
    steps.ready_for_a_day_without_network(tablet)
    tablet.cut_network()
    shared_server.stop()

    page = tablet.go()
    Unlock(page).enter()
    Patients(page).open(name)
    Case(page).open_card()
    card = Card(page)
    card.arrive()
    expect(card.banner).to_contain_text(name)
    assert re.fullmatch("[A-Z]{4} [A-Z]{4}", card.check_word)
