"""``manage.py tidy``: what has served its time goes, and nothing else."""

from datetime import timedelta

import pytest
from django.contrib.sessions.backends.db import SessionStore
from django.contrib.sessions.models import Session
from django.core.management import call_command
from django.utils import timezone

from clinic.audit.models import Entry
from clinic.ledger.models import Record
from clinic.people import lockout
from clinic.people.models import SignInTries

DAY = timedelta(days=1)


@pytest.fixture
def tidied(capsys):
    """Runs the command and gives what it says."""

    def running():
        call_command("tidy")
        return capsys.readouterr().out

    return running


def session(*, ends):
    store = SessionStore()
    store.set_expiry(timezone.now() + ends)
    store.create()
    return store.session_key


def test_ended_sessions_go_and_others_stay(db, tidied):
    session(ends=-DAY)
    alive = session(ends=DAY)

    assert "1 ended sessions" in tidied()
    assert [found.pk for found in Session.objects.all()] == [alive]


def test_tries_that_count_no_more_go_and_a_shut_door_stays_shut(db, tidied):
    now = timezone.now()
    lockout.begin("long ago", now=now - 3 * DAY)
    for _ in range(6):
        lockout.begin("just now", now=now)

    assert "1 forgotten tries" in tidied()
    assert [tries.name for tries in SignInTries.objects.all()] == ["just now"]
    assert lockout.begin("just now", now=now) > timedelta()


def test_dropping_tries_changes_no_answer(db):
    """A row that is dropped would have counted from one again."""
    now = timezone.now()
    for _ in range(50):
        lockout.begin("a", now=now)
    later = now + lockout.FORGOTTEN_AFTER + timedelta(seconds=1)
    kept = SignInTries.objects.get()
    assert lockout.forget(now=later) == 1

    lockout.begin("a", now=later)

    assert (SignInTries.objects.get().count, kept.count) == (1, 5)


def test_records_and_the_audit_trail_stay_for_good(cast, tidied):
    cast.surgeon.accepted(*cast.surgeon.pen.line())
    before = (Record.objects.count(), Entry.objects.count())
    tidied()

    assert (Record.objects.count(), Entry.objects.count()) == before
    assert 0 not in before
