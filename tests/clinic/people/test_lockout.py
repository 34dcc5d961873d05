"""Tries to sign in are counted for all processes together, and a restart forgets none."""

from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime, timedelta
from uuid import UUID

import pytest
from django.db import connection

from clinic.people import lockout
from clinic.people.models import SignInTries

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
PHONE = UUID("0b0b7a52-7b1f-4c46-9d5e-3e1c8d2f6a10")
MINUTE = timedelta(minutes=1)


def tries(count, *, now=NOW):
    return [lockout.begin("a", now=now) for _ in range(count)]


@pytest.mark.parametrize(
    ("count", "minutes"), [(1, 0), (4, 0), (5, 1), (6, 2), (7, 4), (10, 32), (11, 60), (50, 60), (5000, 60)]
)
def test_the_door_is_shut_for_longer_after_each_try(count, minutes):
    assert lockout.wait_after(count) == minutes * MINUTE


def test_five_tries_are_free_and_the_sixth_waits(db):
    assert tries(6) == [timedelta()] * 5 + [MINUTE]


def test_waiting_it_out_gives_one_more_try(db):
    tries(5)

    assert tries(2, now=NOW + MINUTE) == [timedelta(), 2 * MINUTE]


def test_tries_while_the_door_is_shut_do_not_count(db):
    tries(50)

    assert SignInTries.objects.get().count == 5


def test_a_right_try_opens_the_door(db):
    tries(4)
    lockout.succeeded("a")

    assert tries(5) == [timedelta()] * 5


def test_tries_of_yesterday_are_forgotten(db):
    tries(5)

    assert tries(5, now=NOW + timedelta(days=2)) == [timedelta()] * 5


def test_names_and_known_devices_are_counted_apart():
    names = {lockout.name_of("amara"), lockout.name_of("amara", PHONE), lockout.name_of("jonas")}

    assert len(names) == 3
    assert lockout.name_of("Amara") == lockout.name_of("amara")


def test_what_was_typed_as_a_name_is_not_kept(db):
    lockout.begin(lockout.name_of("my password"), now=NOW)

    assert "password" not in SignInTries.objects.get().name


@pytest.mark.django_db(transaction=True)
def test_guesses_sent_side_by_side_count_one_by_one():
    def guess(_):
        try:
            return lockout.begin("a", now=NOW)
        finally:
            connection.close()

    with ThreadPoolExecutor(4) as pool:
        waits = list(pool.map(guess, range(12)))

    assert waits.count(timedelta()) == lockout.FREE_TRIES
