"""The checks in theatre on the tablet: a whole case with and without a network, and what must stop stops."""

import re
from typing import Any

from playwright.sync_api import Page, expect

from tests.journeys import steps
from tests.journeys.browser.device import TABLET, Device
from tests.journeys.newcomers import hospital_number
from tests.journeys.people import SURGEON, THEATRE
from tests.journeys.screens.card import Card
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.set_up import SetUp
from tests.journeys.screens.theatre_check import SECOND, Signed, TheatreCheck
from tests.journeys.site.server import Server

BOTH_EYES, RIGHT_EYE, LEFT_EYE = "Tolvi Maresk", "Sefa Lindqvarn", "Benat Oyelarre"
"""Of the demo clinic, by what is to be operated on."""
DRAFT_KEPT_MS = 1_500
"""A draft is promised to be written 300 ms after a touch at the latest; sealing and writing take the rest."""


def checks_made(server: Server, signed: Signed) -> list[dict[str, Any]]:
    """What was kept of checks of this patient."""
    kept = [received for received in server.ledger() if received.kind == "theatre_check"]
    return [received.body for received in kept if received.patient == signed.patient]


def open_checks(device: Device, signed: Signed) -> TheatreCheck:
    """From the case to the card to its checks, as a nurse goes there."""
    patients = Patients(device.page)
    patients.arrive()
    patients.open(signed.name)
    Case(device.page).open_card()
    card = Card(device.page)
    card.arrive()
    to_checks = device.page.get_by_role("link", name=re.compile("^Checks"))
    expect(to_checks).to_contain_text("next: sign in")
    to_checks.click()
    checks = TheatreCheck(device.page)
    checks.arrive()
    return checks


def test_a_whole_case_is_checked_and_every_phase_is_in_the_ledger(settled, shared_server, sign_anew):
    line = sign_anew(BOTH_EYES, full_name="Yrsa Holmgaard")
    signed = Signed.of(line[-1], line)
    tablet = settled(THEATRE, TABLET)
    checks = open_checks(tablet, signed)

    checks.sign_in(signed)
    checks.time_out(signed)
    checks.sign_out()

    checks.arrive()
    expect(checks.phases.filter(has_text="Passed")).to_have_count(3)
    steps.expect_sent(checks)
    made = checks_made(shared_server, signed)
    assert [(body["phase"], body["outcome"]) for body in made] == [
        (phase, "passed") for phase in ("sign in", "time out", "sign out")
    ]
    checks.back()
    go_round_from_the_card(tablet.page)


def go_round_from_the_card(page: Page) -> None:
    """From the card to everything that goes with it, and back to the card."""
    way = page.get_by_role("navigation", name="This operation")
    Card(page).arrive()
    expect(way.get_by_role("link", name=re.compile("^Checks"))).to_contain_text("all passed")
    way.get_by_role("link", name=re.compile("^Set-up")).click()
    SetUp(page).arrive()
    way.get_by_role("link", name=re.compile("^Operation")).click()
    expect(page.get_by_role("heading", level=1, name="Operation record")).to_be_visible()
    way.get_by_role("link", name=re.compile("^Card")).click()
    Card(page).arrive()


def test_without_a_network_and_with_a_tablet_that_goes_dark_in_between_nothing_is_lost(
    settled, shared_server, sign_anew
):
    line = sign_anew(RIGHT_EYE, full_name="Orla Tindal")
    signed = Signed.of(line[-1], line)
    tablet = settled(THEATRE, TABLET)
    steps.ready_for_a_day_without_network(tablet)
    tablet.cut_network()
    shared_server.stop()
    checks = open_checks(tablet, signed)
    checks.begin("sign in")
    checks.identity_and_paper(signed)
    checks.at("The consent")

    tablet.page.wait_for_timeout(DRAFT_KEPT_MS)
    tablet.page.reload()
    Unlock(tablet.page).enter()
    checks.arrive()
    checks.step("Go on with the sign in")
    checks.consent("The consent", signed.works)
    checks.finish_sign_in(signed)
    checks.time_out(signed)
    checks.sign_out()
    steps.expect_waiting(checks, 3)

    shared_server.start()
    tablet.reconnect()
    steps.expect_sent(checks)
    made = checks_made(shared_server, signed)
    assert [body["outcome"] for body in made] == ["passed"] * 3
    assert all(body["second"]["name"] == SECOND[0] for body in made)


def test_a_wrong_patient_a_wrong_side_and_a_replaced_card_are_stopped_and_kept(settled, shared_server, sign_anew, post):
    line = sign_anew(LEFT_EYE, full_name="Hallbera Quist")
    signed, other_number = Signed.of(line[-1], line), hospital_number()
    tablet = settled(THEATRE, TABLET)
    checks = open_checks(tablet, signed)

    checks.begin("sign in")
    checks.wristband(other_number, signed.born_on)
    checks.stopped(f"the wristband says {other_number}, the card says {signed.hospital_number}")

    checks.begin("sign in")
    checks.identity_and_paper(signed)
    wrong = "left" if signed.works[0][0] == "right" else "right"
    checks.consent("The consent", tuple((wrong, muscle, operation) for _, muscle, operation in signed.works))
    checks.stopped(re.compile(f"Only in the consent: .* the {wrong} "))

    checks.begin("sign in")
    checks.identity_and_paper(signed)
    checks.at("The consent")
    tablet.page.wait_for_timeout(DRAFT_KEPT_MS)
    post(SURGEON, lambda pen: replaced(pen, *line))
    tablet.page.reload()
    Unlock(tablet.page).enter()
    checks.arrive()
    expect(tablet.page.get_by_role("alert")).to_contain_text("REPLACED")
    checks.step("Keep this stop")
    checks.stopped("Another plan has replaced this one.")
    expect(checks.foot.get_by_text("Begin the sign in")).to_have_count(0)

    steps.expect_sent(checks)
    made = checks_made(shared_server, signed)
    assert [body["stop"]["code"] for body in made] == ["wristband_differs", "consent_differs", "card_replaced"]


def replaced(pen, patient, examination, plan, _signature):
    """A newer plan in the place of the signed one."""
    return [pen.plan(patient, examination, supersedes=plan)]
