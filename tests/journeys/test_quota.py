"""A phone whose browser allows no more room: it says so, loses nothing, and goes on when there is room again.

One phone and one server for all of it; each journey takes up the phone with as little room as it says.
"""

import re
from collections.abc import Callable, Iterator
from contextlib import contextmanager

import pytest
from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.browser.device import PHONE, Device, Lasting
from tests.journeys.browser.quota import TELLING, Quota
from tests.journeys.browser.watch import Watch
from tests.journeys.newcomers import somebody
from tests.journeys.people import ORTHOPTIST, SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.patient_form import Details, PatientForm
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.status import Status
from tests.journeys.site.post import post_as
from tests.journeys.site.server import running_server

SOME_ROOM = 2_000_000
"""For the app to open (it takes some 0.3 MB of it) and a day's work, not for a page of a long feed."""
MANY = 600
"""More than a page of the feed; with :data:`NOTE` on each, a page takes some 3 MB."""
NOTE = "外斜視の術後検査" * 220
PUSHED = 200
MUCH_ROOM = 200_000_000
FULL = "storage is full"
SOON_MS = 5_000
NEWER = {"DJANGO_SETTINGS_MODULE": "tests.journeys.site.newer_settings"}
NO_SERVER = re.compile("ERR_CONNECTION|ERR_EMPTY_RESPONSE|ERR_FAILED|ERR_SOCKET")


class Telling(Lasting):
    ARGUMENTS = TELLING


@pytest.fixture(scope="module")
def server(loaded_state, app_build, tmp_path_factory):
    with running_server(loaded_state, app_build, tmp_path_factory.mktemp("quota")) as server:
        yield server


@pytest.fixture(scope="module")
def phone(server, playwright, tmp_path_factory) -> Iterator[Device]:
    memory = tmp_path_factory.mktemp("phone")
    device = Telling(server, Watch(), chromium=playwright.chromium, kind=PHONE, memory=memory)
    steps.settle_in(device, SURGEON)
    steps.ready_for_a_day_without_network(device)
    yield device
    device.close()

    assert device.watch.troubles == []


@pytest.fixture(scope="module")
def browser_quota(phone) -> Quota:
    return Quota(phone)


@pytest.fixture
def quota(phone, browser_quota) -> Iterator[Quota]:
    yield browser_quota
    phone.reconnect()
    browser_quota.lift()


@pytest.fixture
def take_up(phone, quota) -> Callable[[int], int]:
    """The app opened and unlocked where the browser allows that many bytes more; answers with the quota."""

    def opened(room: int) -> int:
        allowed = quota.leave(room)
        Unlock(phone.go()).enter()
        Patients(phone.page).arrive()
        steps.expect_sent(Patients(phone.page))
        return allowed

    return opened


def times_in_ledger(server, details: Details) -> int:
    return [record.body.get("full_name") for record in server.ledger()].count(details.full_name)


def fill_form(page, details: Details) -> PatientForm:
    Patients(page).new()
    form = PatientForm(page)
    form.fill(details)
    return form


def expect_typed(form: PatientForm, details: Details) -> None:
    form.arrive()
    expect(form.page.get_by_text("This is what you had typed before")).to_be_visible()
    expect(form.field("Full name")).to_have_value(details.full_name)
    expect(form.field("Hospital number")).to_have_value(details.hospital_number)


def told(page):
    return page.get_by_text(FULL).first


def test_a_save_for_which_there_is_no_room_is_said_not_to_be_one_and_all_that_was_typed_stays(
    take_up, phone, server, quota
):
    """Not even a draft fits. It outlives screen and page; with room again it is saved, and sent once."""
    typed = somebody()
    take_up(SOME_ROOM)
    before = len(server.ledger())
    quota.use_up()
    form = fill_form(phone.page, typed)
    form.save()
    expect(phone.page.get_by_text("Not saved yet. Nothing you entered is lost.")).to_be_visible()
    expect(told(phone.page)).to_be_visible()
    steps.expect_sent(form)
    assert len(server.ledger()) == before

    form.back()
    Patients(phone.page).new()
    expect_typed(form, typed)
    phone.page.reload()
    Unlock(phone.page).arrive()
    quota.lift()
    Unlock(phone.page).enter()
    expect_typed(form, typed)
    form.save()
    case = Case(phone.page)
    case.arrive()
    steps.expect_sent(case)
    assert [record.body["full_name"] for record in server.ledger()[before:]] == [typed.full_name]


def test_what_is_sent_where_its_answer_finds_no_room_waits_and_is_not_called_unsaved_until_it_entered_once(
    take_up, phone, server, quota
):
    """What is entered without a network reaches the clinic when there is no room any more for its answer.

    The complaint ends when the answer is stored.
    """
    typed = somebody()
    take_up(SOME_ROOM)
    phone.cut_network()
    case = steps.enter_patient(phone.page, typed)
    steps.expect_waiting(case, 1)
    quota.use_up()
    phone.reconnect()
    expect(told(phone.page)).to_be_visible()
    steps.expect_waiting(case, 1)
    expect(phone.page.get_by_text("Nothing was saved")).to_be_hidden(timeout=SOON_MS)
    assert times_in_ledger(server, typed) == 1

    quota.lift()
    phone.go("/status")
    Status(phone.page).send_and_fetch()
    steps.expect_sent(case)
    expect(told(phone.page)).to_be_hidden(timeout=SOON_MS)
    assert times_in_ledger(server, typed) == 1


def many_from_another(server, playwright) -> None:
    def write(pen):
        return [pen.patient(full_name=f"Ida Moen {turn}", note=NOTE) for turn in range(PUSHED)]

    request = playwright.request.new_context()
    for _ in range(MANY // PUSHED):
        post_as(ORTHOPTIST, server, request, write)
    request.dispose()


@contextmanager
def taking_nothing(server) -> Iterator[None]:
    """The server gives, and takes nothing from an app this old."""
    server.stop()
    server.more_variables = NEWER
    server.start()
    yield
    server.stop()
    server.more_variables = {}
    server.start()


def expect_held(phone, *, held: int, waiting: int) -> None:
    phone.go("/status")
    status = Status(phone.page)
    status.arrive()
    expect(status.figure("on this phone")).to_have_text(re.compile(rf"^{held}\b|^{held}on"))
    expect(status.figure("still to send")).to_have_text(re.compile(rf"^{waiting}\b|^{waiting}still"))


def test_a_page_of_the_feed_for_which_there_is_no_room_changes_nothing_here_and_comes_when_there_is(
    take_up, phone, server, quota, playwright
):
    """What waits to be sent meanwhile is kept, through a start of the app too, and sent once."""
    take_up(SOME_ROOM)
    before = len(server.ledger())
    typed = somebody()
    phone.cut_network()
    steps.enter_patient(phone.page, typed)
    many_from_another(server, playwright)
    phone.watch.expect(NO_SERVER)
    phone.watch.expect("426")
    with taking_nothing(server):
        phone.reconnect()
        expect(told(phone.page)).to_be_visible()
        expect_held(phone, held=before + 1, waiting=1)

        phone.cut_network()
        quota.lift()
        phone.page.reload()
        Unlock(phone.page).enter()
        expect_held(phone, held=before + 1, waiting=1)
        assert times_in_ledger(server, typed) == 0

    phone.reconnect()
    Status(phone.page).send_and_fetch()
    steps.expect_sent(Status(phone.page))
    expect_held(phone, held=before + 1 + MANY, waiting=0)
    assert [len(server.ledger()), times_in_ledger(server, typed)] == [before + 1 + MANY, 1]


def test_a_phone_without_any_room_says_whose_it_is_and_opens_what_it_holds(phone, quota):
    quota.leave_none()
    Unlock(phone.go()).enter()
    Patients(phone.page).arrive()


def expect_room(phone, quota, allowed: int) -> None:
    """In the screen's words, to the MB: what is used and what is allowed."""
    phone.go("/status")
    status = Status(phone.page)
    status.arrive()
    expect(status.protection).to_contain_text(f"of {round(allowed / 1e6)} MB allowed")
    shown = re.search(r"(\d+) MB used of", status.protection.inner_text())
    assert shown
    assert abs(int(shown[1]) - quota.used / 1e6) <= 1


def test_the_screen_tells_how_much_room_is_left_and_that_it_is_little_before_it_is_none(take_up, phone, quota):
    nearly = phone.page.get_by_text("storage is nearly full")
    allowed = take_up(MUCH_ROOM)
    expect_room(phone, quota, allowed)
    expect(nearly).to_be_hidden()

    phone.go("/patients")
    Patients(phone.page).arrive()
    expect_room(phone, quota, quota.allow(SOME_ROOM))
    expect(nearly).to_be_visible()
