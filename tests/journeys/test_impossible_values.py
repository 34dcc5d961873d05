"""A value that cannot be is refused where it is entered, with what is allowed; nothing that was right is lost."""

import re

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.people import SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.findings import Findings
from tests.journeys.screens.measure import Measure
from tests.journeys.screens.options import Options
from tests.journeys.screens.patient_form import Details, PatientForm
from tests.journeys.screens.patients import Patients

TO_MEASURE = "Wenna Harrowgate"


def test_a_deviation_and_a_dose_beyond_what_can_be_are_refused_on_the_pad(settled):
    phone = settled(SURGEON)
    Patients(phone.page).open(TO_MEASURE)
    Case(phone.page).step("Measure")
    measure = Measure(phone.page)
    measure.begin()
    measure.figure(20)
    expect(measure.said).to_contain_text("needs its direction first")
    measure.direction("eso")
    measure.exact("15")
    expect(measure.said).not_to_contain_text("Allowed")
    measure.exact("1")

    expect(measure.said).to_contain_text(re.compile(r"Allowed: 0 to 150\s*Δ"))
    measure.done()
    expect(measure.place("primary")).to_have_accessible_name(re.compile(r"eso 15\s*Δ"))

    measure.save()
    findings = Findings(phone.page)
    findings.arrive()
    findings.to_options()
    option = Options(phone.page).open(steps.BOTH_MEDIAL)
    dose = option.dose("RIGHT eye, medial rectus")
    dose.get_by_role("button", name=re.compile("enter exactly")).click()
    sheet = phone.page.get_by_role("dialog")
    for key in ("2", "5"):
        sheet.get_by_role("button", name=key, exact=True).click()

    expect(sheet).to_contain_text(re.compile(r"0\.5 to 20\s*mm"))
    sheet.get_by_role("button", name="Close").click()
    expect(dose).to_contain_text(re.compile(r"\b3(\.0)?\s*mm"))
    expect(dose).not_to_contain_text("surgeon")


def test_a_day_that_no_calendar_has_and_a_number_much_too_long_are_refused_beside_their_fields(settled):
    phone = settled(SURGEON)
    Patients(phone.page).new()
    form = PatientForm(phone.page)
    form.fill(Details(full_name="Ada Nobody", born=("31", "2", "2015"), hospital_number="OI-0506"))
    form.save()

    date = phone.page.get_by_role("group", name="Birth date")
    expect(date).to_contain_text("There is no such day.")
    expect(date).to_contain_text("Allowed")
    expect(form.field("Full name")).to_have_value("Ada Nobody")

    form.fill(Details(full_name="Ada Nobody", born=("3", "2", "2015"), hospital_number="9" * 41))
    form.save()
    expect(form.field("Hospital number")).to_have_accessible_description(re.compile("40"))
    expect(Patients(phone.page).page.get_by_role("heading", level=1, name="New patient")).to_be_visible()
