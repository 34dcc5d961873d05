"""What the clinic refused is handed on in a file or corrected by hand, from the list of where the work is."""

import re

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.people import SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.findings import Findings
from tests.journeys.screens.handing import HandOver
from tests.journeys.screens.measure import Measure
from tests.journeys.screens.patient_form import PatientForm
from tests.journeys.screens.status import Status
from tests.journeys.test_sending import set_role

LIMIT_MS = 60_000


def become(phone, server, role):
    """The account's role changes at the clinic; the phone hears of it when the app is opened again."""
    set_role(server, SURGEON.username, role)
    phone.page.reload()
    Unlock(phone.page).enter()
    expect(Case(phone.page).storage_line).to_be_visible(timeout=LIMIT_MS)
    phone.go("/status")
    status = Status(phone.page)
    status.arrive()
    status.send_and_fetch()
    phone.go("/settings")
    expect(phone.page.get_by_text(f"as {role}")).to_be_visible(timeout=LIMIT_MS)
    phone.go("/status")
    status.arrive()
    return status


def test_a_refused_patient_and_a_refused_examination_are_corrected_and_arrive(phone, server, tmp_path):
    phone.context.set_default_timeout(LIMIT_MS)
    steps.settle_in(phone, SURGEON)
    before = len(server.ledger())
    phone.cut_network()
    steps.enter_patient(phone.page, steps.SOMEBODY)
    steps.measure_esotropia(phone.page)
    set_role(server, SURGEON.username, "theatre")
    phone.reconnect()
    case = Case(phone.page)
    expect(case.storage_line).to_contain_text("Needs attention: 1", timeout=LIMIT_MS)

    status = become(phone, server, "coordinator")
    status.refused.get_by_role("link", name="Hand over by a file").click()
    giving = HandOver(phone.page)
    giving.arrive()
    giving.make()
    assert giving.save(tmp_path).stat().st_size > 1000
    giving.back()
    status.arrive()
    status.refused.get_by_role("link", name="Look and correct").click()
    form = PatientForm(phone.page)
    form.arrive()
    form.field("Hospital number").fill("OI-0777")
    form.save()
    case.arrive()
    expect(case.banner).to_contain_text("OI-0777")
    expect(case.storage_line).to_contain_text("Needs attention: 1", timeout=LIMIT_MS)
    assert [record.kind for record in server.ledger()[before:]] == ["patient"]

    status = become(phone, server, "surgeon")
    expect(status.refused).to_contain_text("Examination")
    status.refused.get_by_role("link", name="Look and correct").click()
    measure = Measure(phone.page)
    measure.arrive()
    measure.place("primary").click()
    measure.read("eso", 35)
    measure.done()
    measure.save()
    Findings(phone.page).arrive()
    expect(case.storage_line).to_contain_text(re.compile("^Sent"), timeout=LIMIT_MS)
    assert [record.kind for record in server.ledger()[before:]] == ["patient", "examination"]
