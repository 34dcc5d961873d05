"""The app under fire: server and app die, a phone has no room, and another's clock is hours off."""

import itertools
import re
from datetime import UTC, datetime, timedelta

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.newcomers import somebody
from tests.journeys.people import SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import SignIn, Unlock
from tests.journeys.screens.patient_form import PatientForm
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.status import Status

GONE = re.compile("ERR_CONNECTION|ERR_EMPTY_RESPONSE|ERR_FAILED|ERR_SOCKET")
HOURS_AHEAD = 7
NO_ROOM = """() => {
    const refuse = () => { throw new DOMException('no room', 'QuotaExceededError'); };
    const { put, add } = IDBObjectStore.prototype;
    window.roomAgain = () => Object.assign(IDBObjectStore.prototype, { put, add });
    Object.assign(IDBObjectStore.prototype, { put: refuse, add: refuse });
}"""
"""As a browser refuses whose quota is used up."""
ROOM_AGAIN = "() => window.roomAgain()"


def names(server, before):
    return [record.body["full_name"] for record in server.ledger()[before:]]


def test_a_server_killed_again_and_again_while_it_is_sent_to_and_fetched_from_has_each_record_once(
    settled, shared_server
):
    """Killed before it has the records, when it has them and before it says so, and as it is asked for news."""
    phone, server = settled(SURGEON), shared_server
    before = len(server.ledger())
    pushes, pulls = itertools.count(), itertools.count()
    taken = []

    def push(route):
        turn = next(pushes)
        if turn == 1:
            route.fetch()
            taken.append(len(server.ledger()) - before)
        if turn < 2:
            server.kill()
            route.abort("connectionreset")
            server.start()
        else:
            route.continue_()

    def pull(route):
        if next(pulls) == 0:
            server.kill()
            route.abort("connectionreset")
            server.start()
        else:
            route.continue_()

    phone.watch.expect(GONE)
    phone.context.route("**/push", push)
    phone.context.route("**/pull?*", pull)
    case = steps.enter_patient(phone.page, somebody())
    steps.measure_esotropia(phone.page)
    for _ in range(2):
        phone.go("/status")
        Status(phone.page).send_and_fetch()
    expect(case.storage_line).to_contain_text("Sent")

    assert taken == [taken[0]]
    assert taken[0] >= 1
    assert [record.kind for record in server.ledger()[before:]] == ["patient", "examination"]


def test_a_phone_without_room_says_so_and_calls_nothing_saved(settled, shared_server):
    phone, server, known = settled(SURGEON), shared_server, somebody()
    before = len(server.ledger())
    phone.watch.expect("quota|Quota")
    Patients(phone.page).new()
    form = PatientForm(phone.page)
    form.fill(known)
    phone.page.evaluate(NO_ROOM)
    form.save()
    expect(phone.page.get_by_text("Not saved yet. Nothing you entered is lost.")).to_be_visible()
    expect(phone.page.get_by_text("storage is full").first).to_be_visible()
    expect(form.storage_line).not_to_contain_text("Saved on this phone: 1")
    form.arrive()
    assert names(server, before) == []

    phone.page.evaluate(ROOM_AGAIN)
    form.save()
    case = Case(phone.page)
    case.arrive()
    steps.expect_sent(case)
    assert names(server, before) == [known.full_name]


def test_a_clock_that_is_hours_off_is_told_and_its_records_enter_as_they_came(phone, shared_server):
    known = somebody()
    phone.context.clock.set_system_time(datetime.now(UTC) + timedelta(hours=HOURS_AHEAD))
    steps.settle_in(phone, SURGEON)
    before = len(shared_server.ledger())
    steps.expect_sent(steps.enter_patient(phone.page, known))
    phone.go("/status")
    Status(phone.page).arrive()

    expect(phone.page.get_by_text(re.compile("clock is .* ahead of the clinic"))).to_be_visible()
    assert names(shared_server, before) == [known.full_name]


def test_an_app_that_is_killed_as_it_saves_has_all_that_it_called_saved_and_sends_it_once(lasting, shared_server):
    phone, server = lasting(SURGEON), shared_server
    saved, perhaps = somebody(), somebody()
    steps.ready_for_a_day_without_network(phone)
    before = len(server.ledger())
    server.kill()
    phone.watch.expect(GONE)

    steps.expect_waiting(steps.enter_patient(phone.page, saved), 1)
    phone.go("/patients")
    Patients(phone.page).new()
    form = PatientForm(phone.page)
    form.fill(perhaps)
    form.save()
    phone.die()

    server.start()
    phone.switch_on()
    phone.context.clear_cookies()  # a browser that dies may or may not have kept its login
    page = phone.go()
    Unlock(page).enter()
    patients = Patients(page)
    patients.arrive()
    phone.go("/sign-in")
    SignIn(page).enter(SURGEON)
    patients.arrive()
    steps.expect_sent(patients)
    expect(patients.entry(saved.full_name)).to_be_visible()
    assert names(server, before) in ([saved.full_name], [saved.full_name, perhaps.full_name])
