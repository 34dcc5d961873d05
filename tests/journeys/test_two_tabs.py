"""The app open twice on one device is one app."""

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.people import SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.patient_form import Details
from tests.journeys.screens.patients import Patients

IN_ONE = Details(full_name="Arvid Lunde", born=("1", "2", "2012"), hospital_number="OI-0503")
IN_OTHER = Details(full_name="Berit Lunde", born=("3", "4", "2014"), hospital_number="OI-0504")


def lose_the_first_reply(phone, server):
    """How many records the clinic had when each answer was lost."""
    lost = []

    def push(route):
        if lost:
            route.continue_()
            return
        route.fetch()
        lost.append(len(server.ledger()))
        route.abort("connectionreset")

    phone.watch.expect("ERR_CONNECTION")
    phone.context.route("**/push", push)
    return lost


def test_what_is_entered_in_one_tab_stands_in_the_other_and_is_sent_once_lost_replies_or_not(settled, shared_server):
    """Whichever tab sends first, the clinic takes it and its answer is lost on the way."""
    phone = settled(SURGEON)
    before = len(shared_server.ledger())
    other = phone.new_tab()
    if Unlock(other).is_shown():
        Unlock(other).enter()
    Patients(other).arrive()

    lost = lose_the_first_reply(phone, shared_server)
    steps.expect_sent(steps.enter_patient(phone.page, IN_ONE))
    assert lost == [before + 1]
    expect(Patients(other).entry(IN_ONE.full_name)).to_be_visible()
    steps.expect_sent(steps.enter_patient(other, IN_OTHER))
    Case(phone.page).back()

    expect(Patients(phone.page).entry(IN_OTHER.full_name)).to_be_visible()
    assert [record.body["full_name"] for record in shared_server.ledger()[before:]] == [
        IN_ONE.full_name,
        IN_OTHER.full_name,
    ]
