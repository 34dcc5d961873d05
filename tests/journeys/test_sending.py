"""What keeps a record from being sent never loses it: it is kept, it is said why, and it goes on."""

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.newcomers import somebody
from tests.journeys.people import SURGEON
from tests.journeys.screens.doors import SignIn
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.status import Status


def test_an_expired_login_keeps_what_waits_until_one_signs_in_again(settled, shared_server):
    phone, server = settled(SURGEON), shared_server
    before = len(server.ledger())
    phone.watch.expect("401")
    server.forget_login(phone.login)

    case = steps.enter_patient(phone.page, somebody())
    steps.expect_waiting(case, 1)
    expect(case.storage_line).to_contain_text("sign in")
    assert len(server.ledger()) == before
    steps.measure_esotropia(phone.page)
    steps.expect_waiting(case, 2)

    phone.go("/sign-in")
    sign_in = SignIn(phone.page)
    sign_in.arrive()
    sign_in.enter(SURGEON)
    Patients(phone.page).arrive()
    steps.expect_sent(Patients(phone.page))
    assert [record.kind for record in server.ledger()[before:]] == ["patient", "examination"]


def test_a_record_that_the_clinic_refuses_stays_with_its_reason_and_holds_up_nothing(settled, shared_server, set_role):
    """The account lost the right to sign while the phone was away; all but the signature goes through."""
    phone, server, known = settled(SURGEON), shared_server, somebody()
    before = len(server.ledger())
    phone.cut_network()
    steps.enter_patient(phone.page, known)
    steps.measure_esotropia(phone.page)
    card = steps.sign_both_medial(phone.page)
    steps.expect_waiting(card, 4)
    set_role(SURGEON, "clinic")

    phone.reconnect()
    expect(card.storage_line).to_contain_text("Needs attention: 1")
    assert [record.kind for record in server.ledger()[before:]] == ["patient", "examination", "plan"]
    card.storage_line.click()
    status = Status(phone.page)
    status.arrive()
    expect(status.refused).to_contain_text("may not write a signature")
    expect(status.refused).to_contain_text(known.full_name)

    set_role(SURGEON, "surgeon")
    status.refused.get_by_role("button", name="Send it again").click()
    steps.expect_sent(status)
    assert [record.kind for record in server.ledger()[before:]] == ["patient", "examination", "plan", "signature"]


def test_the_case_of_a_refused_record_can_still_be_opened(settled, set_role):
    phone, known = settled(SURGEON), somebody()
    set_role(SURGEON, "theatre")
    case = steps.enter_patient(phone.page, known)
    expect(case.storage_line).to_contain_text("Needs attention: 1")
    phone.go("/patients")
    Patients(phone.page).open(known.full_name)
    case.arrive()

    set_role(SURGEON, SURGEON.role)
    phone.go("/status")
    status = Status(phone.page)
    status.refused.get_by_role("button", name="Send it again").click()
    steps.expect_sent(status)
