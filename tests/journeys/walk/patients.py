"""The patients, and one entered."""

from playwright.sync_api import expect

from tests.journeys.browser.device import Device
from tests.journeys.screens.case import Case
from tests.journeys.screens.patient_form import PatientForm
from tests.journeys.screens.patients import Patients
from tests.journeys.walk.visitor import SOMEBODY, Visitor


def among_the_patients(device: Device, visit: Visitor) -> None:
    page = device.page
    patients = Patients(page)
    patients.arrive()
    visit("patients", page)
    patients.search("nobody of that name")
    visit("patients, none found", page)
    patients.search("")
    patients.new()
    form = PatientForm(page)
    form.arrive()
    visit("new patient", page)
    form.save()
    expect(page.get_by_text("The full name is missing.").first).to_be_visible()
    visit("new patient, refused", page)
    form.fill(SOMEBODY)
    form.save()
    case = Case(page)
    case.arrive()
    visit("case, to measure", page)
    case.correct_details()
    form.arrive()
    visit("correct details", page)
    form.back()
    case.arrive()
