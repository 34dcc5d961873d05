"""Where there is no network, a file carries a day's work to another device, and from there to the clinic, once."""

import re

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.people import ORTHOPTIST, SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.handing import HandOver, TakeOver
from tests.journeys.screens.patient_form import Details
from tests.journeys.screens.patients import Patients

NEW = Details(full_name="Ingrid Falk", born=("9", "3", "2019"), hospital_number="OI-0512")


def test_a_days_work_goes_by_a_stick_to_a_colleague_who_comes_home_first(settled, shared_server, tmp_path):
    phone, other = settled(SURGEON), settled(ORTHOPTIST)
    before = len(shared_server.ledger())
    phone.cut_network()
    other.cut_network()
    steps.enter_patient(phone.page, NEW)
    steps.measure_esotropia(phone.page)

    phone.go("/hand-over")
    giving = HandOver(phone.page)
    giving.make()
    words, file = giving.words, giving.save(tmp_path)
    assert re.fullmatch(r"hand-over-\d{4}-\d\d-\d\d-\d{4}\.ppcarry", file.name)
    assert NEW.full_name.encode() not in file.read_bytes()

    other.go("/take-over")
    taking = TakeOver(other.page)
    taking.arrive()
    taking.choose(file)
    taking.take("not the words that were told")
    expect(taking.told).to_contain_text("These words do not open the file")
    taking.take(words.title())
    taking.taken()
    expect(taking.told).to_contain_text(f"2 records from {SURGEON.full_name} are on this device now.")

    taking.step("See the patients")
    patients = Patients(other.page)
    patients.open(NEW.full_name)
    case = Case(other.page)
    case.arrive()
    expect(other.page.get_by_text(f"handed over by a file from {SURGEON.full_name}")).to_be_visible()
    steps.expect_waiting(case, 2)

    other.reconnect()
    expect(case.storage_line).to_contain_text("Sent")
    expect(other.page.get_by_text("handed over by a file")).to_have_count(0)
    sent = [(record.kind, record.author) for record in shared_server.ledger()[before:]]
    assert sent == [("patient", SURGEON.username), ("examination", SURGEON.username)]

    phone.reconnect()
    phone.go("/patients")
    expect(Patients(phone.page).storage_line).to_contain_text("Sent")
    assert len(shared_server.ledger()) == before + 2
