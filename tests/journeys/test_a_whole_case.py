"""One case in theatre from the set-up to the note, by way of all three checks, without a network."""

import re

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.people import DEMO, SURGEON
from tests.journeys.screens.card import Card
from tests.journeys.screens.case import Case
from tests.journeys.screens.operation import Note, Recording
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.set_up import SetUp
from tests.journeys.screens.theatre_check import Signed, TheatreCheck

NAME = "Tolvi Maresk"
RECORDS = DEMO["records"]
SIGNED = next(
    signed
    for record in RECORDS
    if record["kind"] == "signature" and (signed := Signed.of(record, RECORDS)).name == NAME
)


def test_a_case_goes_from_the_set_up_to_the_note_and_every_step_arrives(settled, shared_server):
    phone = settled(SURGEON)
    patients = Patients(phone.page)
    steps.ready_for_a_day_without_network(phone)
    phone.cut_network()
    before = len(shared_server.ledger())
    page = phone.page
    way = page.get_by_role("navigation", name="This operation")

    def onward(place: str) -> None:
        way.get_by_role("link", name=re.compile(f"^{place}")).click()

    patients.open(NAME)
    Case(page).open_card()
    Card(page).arrive()
    onward("Set-up")
    sheet = SetUp(page)
    sheet.arrive()
    sheet.wish("Is a suture to be adjusted?", "Yes")
    sheet.save()

    onward("Checks")
    checks = TheatreCheck(page)
    checks.arrive()
    checks.sign_in(SIGNED)
    checks.time_out(SIGNED)

    checks.arrive()
    onward("Operation")
    record = Recording(page)
    record.arrive()
    for _ in SIGNED.works:
        record.as_planned()
    record.at("Complications")
    record.step("Go on")
    record.at("Anaesthesia and times")
    record.step("Go on")
    record.at("Check and save")
    record.step("Save the record")
    note = Note(page)
    note.arrive()
    expect(note.face).to_contain_text(re.compile("RIGHT|LEFT"))

    onward("Checks")
    checks.arrive()
    checks.sign_out()
    checks.arrive()
    expect(checks.phases.filter(has_text="Passed")).to_have_count(3)

    phone.reconnect()
    steps.expect_sent(checks)
    kinds = [each.kind for each in shared_server.ledger()[before:]]
    assert kinds == ["set_up", "theatre_check", "theatre_check", "operation", "theatre_check"]
