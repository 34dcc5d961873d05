"""Two people on two devices: what one writes the other reads, and what both write is asked, never mixed."""

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.browser.device import PHONE, TABLET, Device
from tests.journeys.people import ORTHOPTIST, SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.findings import Findings
from tests.journeys.screens.patient_form import PatientForm
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.status import Status

KNOWN = "Jorun Askevald"
TO_MEASURE = "Wenna Harrowgate"


def fetch(device: Device) -> None:
    """By the button, in place of waiting for the minute's own round."""
    device.go("/status")
    Status(device.page).send_and_fetch()


def write_allergies(device: Device, words: str) -> None:
    device.go("/patients")
    Patients(device.page).open(KNOWN)
    Case(device.page).correct_details()
    form = PatientForm(device.page)
    form.arrive()
    form.field("Allergies").fill(words)
    form.save()
    Case(device.page).arrive()


def test_an_examination_of_the_orthoptist_is_planned_by_the_surgeon(new_device):
    orthoptist, surgeon = new_device(PHONE), new_device(TABLET)
    steps.settle_in(orthoptist, ORTHOPTIST)
    steps.settle_in(surgeon, SURGEON)

    Patients(orthoptist.page).open(TO_MEASURE)
    steps.expect_sent(steps.measure_esotropia(orthoptist.page))
    fetch(surgeon)
    surgeon.go("/patients")
    Patients(surgeon.page).open(TO_MEASURE)
    Case(surgeon.page).step("See findings")
    Findings(surgeon.page).arrive()
    card = steps.sign_both_medial(surgeon.page)
    steps.expect_sent(card)

    fetch(orthoptist)
    orthoptist.go("/patients")
    Patients(orthoptist.page).open(TO_MEASURE)
    Case(orthoptist.page).open_card()
    expect(orthoptist.page.get_by_role("main")).to_contain_text(card.check_word)


def test_two_corrections_made_apart_are_both_shown_until_a_person_chooses(new_device, server):
    one, other = new_device(PHONE), new_device(PHONE)
    steps.settle_in(one, SURGEON)
    steps.settle_in(other, ORTHOPTIST)
    before = len(server.ledger())
    one.cut_network()
    other.cut_network()
    write_allergies(one, "latex")
    write_allergies(other, "penicillin")

    for device in (one, other):
        device.reconnect()
        steps.expect_sent(Case(device.page))
    fetch(one)
    one.go("/patients")
    Patients(one.page).open(KNOWN)
    case = Case(one.page)
    expect(case.conflict).to_contain_text("latex")
    expect(case.conflict).to_contain_text("penicillin")
    case.settle_for("penicillin")

    expect(case.conflict).to_have_count(0)
    expect(case.details).to_contain_text("penicillin")
    steps.expect_sent(case)
    fetch(other)
    other.go("/patients")
    Patients(other.page).open(KNOWN)
    expect(Case(other.page).conflict).to_have_count(0)
    expect(Case(other.page).details).to_contain_text("penicillin")
    assert [record.body["allergies"] for record in server.ledger()[before:]] == ["latex", "penicillin", "penicillin"]
