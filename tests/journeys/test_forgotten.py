"""A forgotten PIN costs a sign-in and nothing else."""

import re

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.people import SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.patients import Patients

NEXT_PIN = "730415"
LIMIT_MS = 60_000


def test_a_new_pin_is_chosen_after_a_sign_in_and_all_that_was_here_still_is(phone, server):
    with phone.page.expect_response(re.compile("/api/v1/carrying$"), timeout=LIMIT_MS):
        steps.settle_in(phone, SURGEON)
    before = len(server.ledger())
    phone.cut_network()
    steps.enter_patient(phone.page, steps.SOMEBODY)
    phone.page.reload()
    unlock = Unlock(phone.page)
    unlock.arrive()
    unlock.forget()
    unlock.renew(SURGEON, NEXT_PIN)
    expect(phone.page.get_by_text("Nothing is lost: try again where there is a network.")).to_be_visible(
        timeout=LIMIT_MS
    )

    phone.reconnect()
    unlock.renew(SURGEON, NEXT_PIN)
    case = Case(phone.page)
    expect(case.banner).to_contain_text(steps.SOMEBODY.full_name, timeout=LIMIT_MS)
    expect(case.storage_line).to_contain_text("Sent", timeout=LIMIT_MS)
    assert len(server.ledger()) == before + 1

    phone.page.reload()
    unlock.enter(NEXT_PIN)
    expect(case.banner).to_contain_text(steps.SOMEBODY.full_name)
    phone.go("/patients")
    Patients(phone.page).arrive()
