"""Whoever pulls gets every record, in feed order, and never misses one that was committed late."""

import gzip
import json
import threading
from uuid import UUID

import pytest
from django.db import connection, transaction
from django.utils import timezone

from clinic.ledger.commands import Entry, append, lock_feed, renew_feed
from clinic.ledger.models import FeedCounter, Record, Supersession
from clinic.people.models import Membership
from clinic.people.role import Role
from clinic.sync import cursor as cursors
from clinic.sync.cursor import Cursor
from planner.canonical import canonical
from tests.clinic.cast import Person


def patients(person, count):
    records = [person.pen.patient(hospital_number=f"H-{number}") for number in range(count)]
    if records:
        person.accepted(*records)
    return records


def test_an_empty_clinic_has_an_empty_feed_and_a_cursor_to_wait_with(cast):
    page = cast.surgeon.page()

    assert (page["records"], page["more"], page["reset"]) == ([], False, False)
    patients(cast.surgeon, 1)
    assert len(cast.surgeon.page(page["cursor"])["records"]) == 1


def test_a_pulled_record_is_the_pushed_one_with_its_place(cast):
    first = cast.surgeon.pen.patient(note="Ω\n“quoted” \\")
    again = cast.surgeon.pen.patient_again(first, full_name="Inês Ferreira")
    results = cast.surgeon.accepted(first, again)

    records, _ = cast.orthoptist.everything()

    for pulled, pushed, result in zip(records, (first, again), results, strict=True):
        assert pulled == pushed | {name: result[name] for name in ("position", "received_at", "receipt")}


@pytest.mark.parametrize("limit", [1, 2, 3, 7, 8])
def test_pages_of_any_size_give_each_record_once_in_order(cast, limit):
    patients(cast.surgeon, 7)

    records, _ = cast.surgeon.everything(limit=limit)

    assert [record["position"] for record in records] == [1, 2, 3, 4, 5, 6, 7]


def test_a_cursor_goes_on_where_the_last_pull_ended(cast):
    patients(cast.surgeon, 3)
    _, cursor = cast.orthoptist.everything()
    patients(cast.surgeon, 2)

    records, _ = cast.orthoptist.everything(cursor)

    assert [record["position"] for record in records] == [4, 5]


def test_another_clinics_records_are_not_in_the_feed(cast):
    patients(cast.stranger, 2)
    patients(cast.surgeon, 1)

    records, _ = cast.surgeon.everything()

    assert {record["clinic"] for record in records} == {str(cast.clinic.pk)}


@pytest.mark.parametrize("who", ["surgeon", "theatre_nurse"])
def test_a_cursor_of_another_feed_is_reset_and_so_are_unreadable_ones(cast, who):
    patients(cast.surgeon, 2)
    person = getattr(cast, who)
    _, cursor = person.everything()
    renew_feed(cast.clinic.pk)

    for lost in (cursor, "no cursor at all"):
        page = person.page(lost)
        assert (page["reset"], page["records"], page["cursor"], page["more"]) == (True, [], "", True)
    assert person.page("")["reset"] is False


def test_a_cursor_beyond_the_feeds_end_comes_from_a_lost_history_and_is_reset(cast):
    patients(cast.surgeon, 2)
    feed = FeedCounter.objects.get(clinic=cast.clinic).feed

    assert cast.surgeon.page(str(Cursor(feed=feed, scope="all", position=3)))["reset"] is True
    assert cast.surgeon.page(str(Cursor(feed=feed, scope="all", position=2)))["reset"] is False


def test_a_cursor_kept_from_another_role_is_reset(cast):
    patients(cast.surgeon, 2)
    _, cursor = cast.theatre_nurse.everything()
    Membership.objects.filter(user=cast.theatre_nurse.user).update(role=Role.CLINIC)

    assert cast.theatre_nurse.page(cursor)["reset"] is True
    assert len(cast.theatre_nurse.everything()[0]) == 2


def test_a_caught_up_device_costs_the_same_however_large_the_ledger_is(cast, django_assert_num_queries):
    patients(cast.surgeon, 50)
    _, cursor = cast.surgeon.everything()
    parsed = cursors.read(cursor)

    assert parsed.position == 50
    with django_assert_num_queries(6):  # session, account, membership, device, counter, page
        assert cast.surgeon.page(cursor)["records"] == []


def test_a_page_costs_a_fixed_number_of_queries(cast, django_assert_num_queries):
    patients(cast.surgeon, 50)

    with django_assert_num_queries(8):  # the same, the supersessions, and the audit trail
        assert len(cast.surgeon.page()["records"]) == 50


def entry(record):
    return Entry(
        id=UUID(record["id"]),
        kind=record["kind"],
        patient=UUID(record["patient"]),
        author=record["author"],
        device=UUID(record["device"]),
        recorded_at=record["recorded_at"],
        supersedes=(),
        body=canonical(record["body"]),
        digest=record["digest"],
    )


class SlowWriter(threading.Thread):
    """Appends one record and keeps its transaction open until it is told to commit."""

    def __init__(self, person) -> None:
        super().__init__()
        self.person = person
        self.wrote, self.may_commit = threading.Event(), threading.Event()

    def run(self):
        try:
            with transaction.atomic():
                feed = lock_feed(self.person.clinic.pk)
                append(feed, [entry(self.person.pen.patient())], received_at=timezone.now())
                self.wrote.set()
                assert self.may_commit.wait(10)
        finally:
            connection.close()


class QuickWriter(threading.Thread):
    """Pushes one record through the API."""

    def __init__(self, person) -> None:
        super().__init__()
        self.person = person

    def run(self):
        try:
            self.person.accepted(self.person.pen.patient(hospital_number="H-2"))
        finally:
            connection.close()


@pytest.mark.postgres
def test_interleaved_writers_cannot_make_a_reader_miss_a_record(committed_cast):
    """A reader that pulls at every moment of two overlapping transactions ends with both records."""
    reader = committed_cast.coordinator
    FeedCounter.objects.create(clinic=committed_cast.clinic)
    slow, quick = SlowWriter(committed_cast.surgeon), QuickWriter(committed_cast.orthoptist)
    received, cursor = reader.everything()

    slow.start()
    assert slow.wrote.wait(10)
    quick.start()
    quick.join(0.3)
    between, cursor = reader.everything(cursor)
    slow.may_commit.set()
    slow.join(10)
    quick.join(10)
    after, _ = reader.everything(cursor)

    assert received + between == []
    assert [record["position"] for record in after] == [1, 2]


@pytest.mark.postgres
def test_the_same_interleaving_makes_a_reader_miss_a_record_where_positions_are_not_locked(committed_cast):
    """The counter-proof: with a bare sequence the later number is seen first, and a cursor steps over the earlier."""
    numbers = iter((1, 2))
    took_one, may_commit = threading.Event(), threading.Event()

    def insert(person, number):
        record = entry(person.pen.patient())
        Record(
            id=record.id,
            clinic_id=person.clinic.pk,
            position=number,
            kind=record.kind,
            patient=record.patient,
            author_id=record.author,
            device=record.device,
            recorded_at=record.recorded_at,
            body=record.body,
            digest=record.digest,
            received_at=timezone.now(),
        ).save()

    def slow_writer():
        try:
            with transaction.atomic():
                insert(committed_cast.surgeon, next(numbers))
                took_one.set()
                assert may_commit.wait(10)
        finally:
            connection.close()

    slow = threading.Thread(target=slow_writer)
    slow.start()
    assert took_one.wait(10)
    insert(committed_cast.orthoptist, next(numbers))
    seen = list(Record.objects.filter(position__gt=0).values_list("position", flat=True))
    may_commit.set()
    slow.join(10)
    seen += Record.objects.filter(position__gt=max(seen)).values_list("position", flat=True)

    assert seen == [2]
    assert Record.objects.count() == 2


def test_a_reader_that_pulls_while_others_push_ends_with_every_record(committed_cast):
    """On SQLite and PostgreSQL alike: what was handed out in pieces is the whole feed, in order, without a gap."""
    done = threading.Event()

    def write(person):
        try:
            for number in range(8):
                person.accepted(*(person.pen.patient(hospital_number=f"H-{number}-{place}") for place in range(3)))
        finally:
            connection.close()

    writers = [
        threading.Thread(target=write, args=(person,)) for person in (committed_cast.surgeon, committed_cast.orthoptist)
    ]
    received, cursor = [], ""
    for writer in writers:
        writer.start()
    while not done.is_set():
        if not any(writer.is_alive() for writer in writers):
            done.set()
        records, cursor = committed_cast.coordinator.everything(cursor, limit=5)
        received += [record["position"] for record in records]

    assert received == list(range(1, 49))


def test_links_are_read_with_the_page(cast):
    first = cast.surgeon.pen.patient()
    left, right = (cast.surgeon.pen.patient_again(first, full_name=name) for name in ("A", "B"))
    settled = cast.surgeon.pen.patient_again(first, full_name="C") | {"supersedes": [right["id"], left["id"]]}
    cast.surgeon.accepted(first, left, right, settled)

    assert cast.surgeon.page()["records"][-1]["supersedes"] == [right["id"], left["id"]]
    assert Supersession.objects.count() == 4


def test_a_person_without_a_device_of_that_name_pulls_nothing(cast):
    borrowed = Person(cast.clinic, cast.surgeon.client, cast.orthoptist.device, cast.surgeon.user)

    assert borrowed.pull().status_code == 403
    assert borrowed.pull().json()["errors"][0]["code"] == "device_unknown"


def test_a_large_page_travels_compressed_to_who_takes_it(cast):
    patients(cast.surgeon, 20)
    plain = cast.surgeon.pull()
    packed = cast.surgeon.client.get(
        f"/api/v1/clinics/{cast.clinic.pk}/pull",
        {"device": cast.surgeon.device},
        headers={"Accept-Encoding": "gzip"},
    )

    assert packed.headers["Content-Encoding"] == "gzip"
    assert len(packed.content) < len(plain.content) / 3
    assert json.loads(gzip.decompress(packed.content))["records"] == plain.json()["records"]
