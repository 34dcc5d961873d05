"""A child who was entered twice becomes one person by a person's word, without a network, and can be parted again."""

from dataclasses import replace

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.people import SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.patient_form import Details
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.same_person import SamePerson

ONE = Details(full_name="Annika Solvang", born=("5", "6", "2018"), hospital_number="OI-0513")
OTHER = replace(ONE, full_name="Anika Solvang", hospital_number="OI-0777", allergies="Penicillin")


def test_two_entries_of_one_child_are_joined_and_parted_without_a_network(settled):
    phone = settled(SURGEON)
    patients = Patients(phone.page)
    steps.ready_for_a_day_without_network(phone)
    phone.cut_network()
    steps.enter_patient(phone.page, ONE)
    phone.go("/patients")
    case = steps.enter_patient(phone.page, OTHER)

    hint = phone.page.get_by_role("region", name="Perhaps entered twice")
    expect(hint).to_contain_text(ONE.full_name)
    hint.get_by_text("Compare the two").click()
    same = SamePerson(phone.page)
    same.arrive()
    expect(phone.page.get_by_text("differs", exact=True)).to_have_count(3)
    phone.page.get_by_role("radio", name=ONE.full_name).check()
    phone.page.get_by_role("button", name="They are one person").click()
    expect(phone.page.get_by_text("Say in a few words how you know.").first).to_be_visible()
    same.join("The mother says that it is one child.")

    case.arrive()
    expect(case.banner).to_contain_text(ONE.hospital_number)
    also = phone.page.get_by_role("region", name="Also entered as")
    expect(also).to_contain_text(OTHER.hospital_number)
    expect(phone.page.get_by_text("Allergies: there Penicillin, here none entered")).to_be_visible()
    case.back()
    patients.arrive()
    patients.search(OTHER.hospital_number)
    expect(patients.entry("Solvang")).to_have_count(1)
    expect(patients.entry("Solvang")).to_contain_text(f"{ONE.hospital_number} and {OTHER.hospital_number}")

    patients.open(ONE.full_name)
    case.arrive()
    phone.page.get_by_role("button", name="Take back").last.click()
    sheet = phone.page.get_by_role("dialog")
    sheet.get_by_label("Reason").fill("They are twins.")
    sheet.get_by_role("button", name="Take back this joining").click()
    expect(also).to_have_count(0)
    expect(hint).to_have_count(0)
    case.back()
    patients.arrive()
    patients.search("Solvang")
    expect(patients.entry("Solvang")).to_have_count(2)
    patients.search("")
    phone.reconnect()
    steps.expect_sent(Case(phone.page))
