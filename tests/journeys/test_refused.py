"""What the clinic refused is handed on in a file or corrected by hand, from the list of where the work is."""

import re

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.newcomers import hospital_number, somebody
from tests.journeys.people import SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.findings import Findings
from tests.journeys.screens.handing import HandOver
from tests.journeys.screens.measure import Measure
from tests.journeys.screens.patient_form import PatientForm
from tests.journeys.screens.status import Status


def become(phone, set_role, role):
    """The account's role changes at the clinic; the phone hears of it when the app is opened again."""
    set_role(SURGEON, role)
    phone.page.reload()
    Unlock(phone.page).enter()
    expect(Case(phone.page).storage_line).to_be_visible()
    phone.go("/status")
    status = Status(phone.page)
    status.arrive()
    status.send_and_fetch()
    phone.go("/settings")
    expect(phone.page.get_by_text(f"as {role}")).to_be_visible()
    phone.go("/status")
    status.arrive()
    return status


def test_a_refused_patient_and_a_refused_examination_are_corrected_and_arrive(
    settled, shared_server, set_role, tmp_path
):
    phone, server = settled(SURGEON), shared_server
    corrected = hospital_number()
    before = len(server.ledger())
    phone.cut_network()
    steps.enter_patient(phone.page, somebody())
    steps.measure_esotropia(phone.page)
    set_role(SURGEON, "theatre")
    phone.reconnect()
    case = Case(phone.page)
    expect(case.storage_line).to_contain_text("Needs attention: 1")

    status = become(phone, set_role, "coordinator")
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
    form.field("Hospital number").fill(corrected)
    form.save()
    case.arrive()
    expect(case.banner).to_contain_text(corrected)
    phone.go("/status")
    status.arrive()
    expect(status.refused.get_by_role("link", name="Look and correct")).to_have_count(1)
    expect(status.refused).to_contain_text("Examination")
    assert [record.kind for record in server.ledger()[before:]] == ["patient"]

    status = become(phone, set_role, "surgeon")
    expect(status.refused).to_contain_text("Examination")
    status.refused.get_by_role("link", name="Look and correct").click()
    measure = Measure(phone.page)
    measure.arrive()
    measure.place("primary").click()
    measure.read("eso", 35)
    measure.done()
    measure.save()
    Findings(phone.page).arrive()
    expect(case.storage_line).to_contain_text(re.compile("^Sent"))
    assert [record.kind for record in server.ledger()[before:]] == ["patient", "examination"]
