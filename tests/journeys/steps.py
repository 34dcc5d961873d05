"""What several journeys do on the way to their own promise."""

from playwright.sync_api import Page, expect

from tests.journeys.browser.device import Device
from tests.journeys.people import Person
from tests.journeys.screens.card import Card
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Secret, SignIn
from tests.journeys.screens.findings import Findings
from tests.journeys.screens.frame import Frame
from tests.journeys.screens.measure import Measure
from tests.journeys.screens.options import Options
from tests.journeys.screens.patient_form import Details, PatientForm
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.signing import Signing
from tests.journeys.screens.status import Status

BOTH_MEDIAL = "Recess both medial recti"
EYES = ("RIGHT eye", "LEFT eye")


def settle_in(device: Device, person: Person) -> Patients:
    """Sign in, choose a lock, and see the clinic's patients: all that it has."""
    page = device.go()
    SignIn(page).enter(person)
    Secret(page).choose()
    patients = Patients(page)
    patients.arrive()
    expect_sent(patients)
    expect(patients.storage_line).to_contain_text("clinic heard")
    return patients


def expect_sent(frame: Frame) -> None:
    expect(frame.storage_line).to_contain_text("Sent")


def expect_waiting(frame: Frame, count: int) -> None:
    expect(frame.storage_line).to_contain_text(f"Saved on this phone: {count}")


def ready_for_a_day_without_network(device: Device) -> None:
    """Waits for the app's own word that it has all it needs; then back to the patients."""
    status = Status(device.page)
    Patients(device.page).storage_line.click()
    status.arrive()
    expect(device.page.get_by_text(Status.READY)).to_be_visible()
    status.back()
    Patients(device.page).arrive()


def enter_patient(page: Page, details: Details) -> Case:
    Patients(page).new()
    form = PatientForm(page)
    form.fill(details)
    form.save()
    case = Case(page)
    case.arrive()
    expect(case.banner).to_contain_text(details.full_name)
    return case


def measure_esotropia(page: Page) -> Findings:
    """40 Δ at distance, 45 Δ at near, from the case to its findings."""
    Case(page).step("Measure")
    measure = Measure(page)
    measure.arrive()
    measure.begin()
    measure.read("eso", 40)
    measure.next()
    measure.read("eso", 45)
    measure.done()
    measure.save()
    findings = Findings(page)
    findings.arrive()
    return findings


def choose_both_medial(page: Page) -> Signing:
    """From the findings to a plan that waits to be drawn again."""
    Findings(page).to_options()
    options = Options(page)
    options.arrive()
    options.open(BOTH_MEDIAL).choose()
    signing = Signing(page)
    signing.read_cautions()
    return signing


def draw_both_medial(signing: Signing) -> None:
    for eye in EYES:
        signing.draw(eye, "medial rectus", "recess")
    signing.compare()


def sign_both_medial(page: Page) -> Card:
    """From the findings to the signed card."""
    signing = choose_both_medial(page)
    draw_both_medial(signing)
    signing.sign()
    card = Card(page)
    card.arrive()
    return card
