"""A forgotten PIN costs a sign-in and nothing else."""

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.newcomers import somebody
from tests.journeys.people import PIN, SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.settings import Settings

NEXT_PIN = "730415"


def test_a_new_pin_is_chosen_after_a_sign_in_and_all_that_was_here_still_is(settled, shared_server):
    phone, known = settled(SURGEON), somebody()
    before = len(shared_server.ledger())
    phone.cut_network()
    steps.enter_patient(phone.page, known)
    phone.page.reload()
    unlock = Unlock(phone.page)
    unlock.arrive()
    unlock.forget()
    unlock.renew(SURGEON, NEXT_PIN)
    expect(phone.page.get_by_text("Nothing is lost: try again where there is a network.")).to_be_visible()

    phone.reconnect()
    unlock.renew(SURGEON, NEXT_PIN)
    case = Case(phone.page)
    expect(case.banner).to_contain_text(known.full_name)
    expect(case.storage_line).to_contain_text("Sent")
    assert len(shared_server.ledger()) == before + 1

    phone.page.reload()
    unlock.enter(NEXT_PIN)
    expect(case.banner).to_contain_text(known.full_name)
    phone.go("/settings")
    Settings(phone.page).change_secret(NEXT_PIN, PIN)
