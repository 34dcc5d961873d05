"""What the browser promises about this phone's storage is told, and so is that it emptied it."""

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.browser.storage import empty_storage, promise_to_keep
from tests.journeys.newcomers import somebody
from tests.journeys.people import SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Secret, SignIn, Unlock
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.status import Status


def protection_of(phone):
    phone.go("/status")
    status = Status(phone.page)
    status.arrive()
    return status.protection


def test_what_the_browser_emptied_is_told_and_comes_back_and_what_it_promises_from_then_on_is_told_too(
    lasting, shared_server
):
    """What was not sent is gone, which is said before anybody signs in.

    A promise is asked for at the first save, and again at a start at which the browser would give it.
    """
    phone = lasting(SURGEON)
    sent, unsent, later = somebody(), somebody(), somebody()
    steps.expect_sent(steps.enter_patient(phone.page, sent))
    phone.go("/patients")
    phone.cut_network()
    steps.expect_waiting(steps.enter_patient(phone.page, unsent), 1)
    empty_storage(phone)

    page = phone.go()
    SignIn(page).arrive()
    expect(page.get_by_text("storage was cleared")).to_be_visible()
    expect(page.get_by_text("What was not sent is gone from here")).to_be_visible()
    SignIn(page).enter(SURGEON)
    Secret(page).choose()
    patients = Patients(page)
    patients.arrive()
    steps.expect_sent(patients)
    names = [record.body.get("full_name") for record in shared_server.ledger()]
    assert (names.count(sent.full_name), names.count(unsent.full_name)) == (1, 0)
    protection = protection_of(phone)
    expect(protection).to_contain_text("The browser had emptied this phone")
    expect(protection).to_contain_text("is asked to keep it when the first record is saved")

    phone.go("/patients")
    steps.enter_patient(page, later)
    steps.expect_sent(Case(page))
    expect(protection_of(phone)).to_contain_text("The browser has not promised to keep it.")

    promise_to_keep(phone)
    page.reload()
    Unlock(page).enter()
    expect(protection_of(phone)).to_contain_text("The browser has promised to keep it until you remove it.")
