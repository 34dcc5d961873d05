"""A phone that is taken out of use gives back what it holds, is emptied, and says so; nothing is lost on the way."""

import sqlite3
from binascii import unhexlify
from collections.abc import Callable, Iterator
from contextlib import closing

import pytest
from django_otp.oath import TOTP
from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.browser.device import TABLET
from tests.journeys.newcomers import somebody
from tests.journeys.people import COORDINATOR
from tests.journeys.screens.devices import Devices
from tests.journeys.screens.doors import Secret, SignIn
from tests.journeys.screens.patients import Patients

KEY = "3132333435363738393031323334353637383930"
"""The seed of RFC 6238's own examples."""


@pytest.fixture
def give_second_factor(shared_server) -> Iterator[Callable[[str], TOTP]]:
    """As ``manage.py second_factor`` does, past the site's own code; what the authenticator in the pocket shows.

    For as long as the journey lasts.
    """

    def change(statement: str, *values: str) -> None:
        with closing(sqlite3.connect(shared_server.state / "clinic.sqlite3", timeout=10)) as database, database:
            database.execute(statement, values)

    def give(username: str) -> TOTP:
        change(
            "INSERT INTO otp_totp_totpdevice"
            " (user_id, name, confirmed, key, step, t0, digits, tolerance, drift, last_t, throttling_failure_count)"
            " SELECT id, 'authenticator', 1, ?, 30, 0, 6, 1, 0, -1, 0 FROM people_user WHERE username = ?",
            KEY,
            username,
        )
        return TOTP(unhexlify(KEY))

    yield give
    change("DELETE FROM otp_totp_totpdevice")


def test_a_revoked_phone_sends_what_it_holds_and_is_emptied(phone, settled, shared_server, give_second_factor):
    server, known = shared_server, somebody()
    tablet = settled(COORDINATOR, TABLET)
    steps.settle_in(phone, COORDINATOR)
    before = len(server.ledger())

    phone.cut_network()
    steps.expect_waiting(steps.enter_patient(phone.page, known), 1)
    phone.go("/devices")
    Devices(phone.page).arrive()
    expect(phone.page.get_by_text("it needs the network")).to_be_visible()

    tablet.go("/devices")
    devices = Devices(tablet.page)
    devices.arrive()
    expect(devices.in_hand).to_have_count(1)
    devices.rename(devices.in_hand, "Tablet of the team")
    expect(devices.in_hand).to_contain_text("Tablet of the team")
    devices.rename(devices.other("Linux"), "Lost phone")
    lost = devices.other("Lost phone")
    expect(lost).to_have_count(1)
    sheet = devices.ask_to_revoke(lost)
    expect(sheet.get_by_role("button", name="Revoke", exact=True)).to_be_disabled()
    sheet.get_by_role("button", name="Keep it").click()
    devices.revoke(lost)
    expect(lost).to_contain_text("It has not given back what it holds yet.")

    phone.watch.expect("403|401")
    phone.reconnect()
    sign_in = SignIn(phone.page)
    sign_in.arrive()
    expect(phone.page.get_by_text(f"revoked for {COORDINATOR.full_name}")).to_be_visible()
    expect(phone.page.get_by_text("Nothing was lost.")).to_be_visible()
    assert [record.body["full_name"] for record in server.ledger()[before:]] == [known.full_name]
    phone.page.reload()
    sign_in.arrive()
    expect(phone.page.get_by_text(f"revoked for {COORDINATOR.full_name}")).to_be_visible()
    sign_in.enter(COORDINATOR)
    expect(phone.page.get_by_text("This device was revoked, and nothing more is taken from it.")).to_be_visible()
    tablet.go("/patients")
    tablet.go("/devices")
    expect(lost).to_contain_text("It has sent all that it held, and was emptied.")

    authenticator = give_second_factor(COORDINATOR.username)
    phone.page.get_by_role("button", name="Use it as a new device").click()
    expect(phone.page.get_by_label("Code of your authenticator app")).to_have_count(0)
    sign_in.enter(COORDINATOR)
    phone.page.get_by_label("Code of your authenticator app").fill(f"{authenticator.token():06d}")
    sign_in.step("Sign in")
    Secret(phone.page).choose()
    Patients(phone.page).arrive()
    expect(Patients(phone.page).entry(known.full_name)).to_be_visible()
