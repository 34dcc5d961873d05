"""Two people on two devices: what one writes the other reads, and what both write is asked, never mixed."""

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.browser.device import Device
from tests.journeys.people import ORTHOPTIST, SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.findings import Findings
from tests.journeys.screens.patient_form import Details, PatientForm
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.status import Status

KNOWN = "Jorun Askevald"
NEW = Details(full_name="Tove Almqvist", born=("7", "8", "2017"), hospital_number="OI-0511")


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


def test_an_examination_of_the_orthoptist_is_planned_by_the_surgeon(settled):
    orthoptist, surgeon = settled(ORTHOPTIST), settled(SURGEON)

    steps.enter_patient(orthoptist.page, NEW)
    steps.expect_sent(steps.measure_esotropia(orthoptist.page))
    fetch(surgeon)
    surgeon.go("/patients")
    Patients(surgeon.page).open(NEW.full_name)
    Case(surgeon.page).step("See findings")
    Findings(surgeon.page).arrive()
    card = steps.sign_both_medial(surgeon.page)
    steps.expect_sent(card)

    fetch(orthoptist)
    orthoptist.go("/patients")
    Patients(orthoptist.page).open(NEW.full_name)
    Case(orthoptist.page).open_card()
    expect(orthoptist.page.get_by_role("main")).to_contain_text(card.check_word)


def test_two_corrections_made_apart_are_both_shown_until_a_person_chooses(settled, shared_server):
    one, other = settled(SURGEON), settled(ORTHOPTIST)
    before = len(shared_server.ledger())
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
    assert [record.body["allergies"] for record in shared_server.ledger()[before:]] == [
        "latex",
        "penicillin",
        "penicillin",
    ]
