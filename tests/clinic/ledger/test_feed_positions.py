"""Positions are 1, 2, 3, ... per clinic in the order of commits, however many write at once."""

import threading
import uuid
from concurrent.futures import ThreadPoolExecutor

import pytest
from django.db import IntegrityError, close_old_connections, connection, transaction
from django.utils import timezone

from clinic.ledger.commands import Entry, append, lock_feed, renew_feed
from clinic.ledger.models import FeedCounter, Record
from planner.canonical import canonical, digest
from tests.clinic.pen import PATIENT, RECORDED_AT, uuid7


def entry(person):
    record_id = uuid.UUID(uuid7())
    return Entry(
        id=record_id,
        kind="patient",
        patient=record_id,
        author=person.user.username,
        device=uuid.UUID(person.device),
        recorded_at=RECORDED_AT,
        supersedes=(),
        body=canonical(PATIENT),
        digest=digest(PATIENT),
    )


def write(person, count=1):
    with transaction.atomic():
        feed = lock_feed(person.clinic.pk)
        return append(feed, [entry(person) for _ in range(count)], received_at=timezone.now())


def write_twice(person):
    feed, same = lock_feed(person.clinic.pk), entry(person)
    append(feed, [entry(person), same], received_at=timezone.now())
    append(feed, [same], received_at=timezone.now())


def positions(clinic):
    return list(Record.objects.filter(clinic=clinic).order_by("position").values_list("position", flat=True))


def test_positions_follow_each_other_from_one(cast):
    write(cast.surgeon, 3)
    write(cast.orthoptist, 2)

    assert positions(cast.clinic) == [1, 2, 3, 4, 5]


def test_each_clinic_counts_for_itself(cast):
    write(cast.surgeon, 2)
    write(cast.stranger, 3)

    assert positions(cast.clinic) == [1, 2]
    assert positions(cast.stranger.clinic) == [1, 2, 3]


def test_a_transaction_that_fails_leaves_no_gap(cast):
    write(cast.surgeon)
    with pytest.raises(IntegrityError), transaction.atomic():
        write_twice(cast.surgeon)
    write(cast.surgeon)

    assert positions(cast.clinic) == [1, 2]


@pytest.mark.django_db(transaction=True)
def test_nothing_is_appended_outside_the_transaction_that_holds_the_lock(committed_cast):
    feed = FeedCounter.objects.create(clinic=committed_cast.clinic)

    with pytest.raises(transaction.TransactionManagementError):
        append(feed, [entry(committed_cast.surgeon)], received_at=timezone.now())


def test_a_renewed_feed_has_another_id_and_goes_on_counting(cast):
    write(cast.surgeon, 2)
    before = FeedCounter.objects.get(clinic=cast.clinic)

    renewed = renew_feed(cast.clinic.pk)
    write(cast.surgeon)

    assert renewed != before.feed
    assert positions(cast.clinic) == [1, 2, 3]


def test_writers_at_the_same_time_share_the_positions_without_gap_or_repeat(committed_cast):
    def work(person):
        close_old_connections()
        try:
            for _ in range(5):
                write(person, 2)
        finally:
            connection.close()

    with ThreadPoolExecutor(4) as pool:
        list(pool.map(work, [committed_cast.surgeon, committed_cast.orthoptist] * 2))

    assert positions(committed_cast.clinic) == list(range(1, 41))
    assert FeedCounter.objects.get(clinic=committed_cast.clinic).position == 40


@pytest.mark.postgres
def test_a_second_writer_waits_until_the_first_has_committed(committed_cast):
    """Without the lock the second would commit position 2 while 1 is invisible, and a reader would step over it."""
    has_position, may_commit = threading.Event(), threading.Event()

    def slow_writer():
        try:
            with transaction.atomic():
                feed = lock_feed(committed_cast.clinic.pk)
                append(feed, [entry(committed_cast.surgeon)], received_at=timezone.now())
                has_position.set()
                assert may_commit.wait(10)
        finally:
            connection.close()

    def quick_writer():
        try:
            assert has_position.wait(10)
            write(committed_cast.orthoptist)
        finally:
            connection.close()

    FeedCounter.objects.create(clinic=committed_cast.clinic)
    slow, quick = threading.Thread(target=slow_writer), threading.Thread(target=quick_writer)
    slow.start()
    quick.start()
    assert has_position.wait(10)
    quick.join(0.3)

    assert quick.is_alive()
    assert positions(committed_cast.clinic) == []
    assert FeedCounter.objects.get(clinic=committed_cast.clinic).position == 0

    may_commit.set()
    slow.join(10)
    quick.join(10)

    assert positions(committed_cast.clinic) == [1, 2]
    first = Record.objects.get(clinic=committed_cast.clinic, position=1)
    assert first.author_id == committed_cast.surgeon.user.username
