"""Rows that go in many at once, past the models: as the models would have put them, and all or none."""

import datetime as dt
import uuid

import pytest
from django.db import IntegrityError, transaction

from clinic.ledger.models import FeedCounter, Supersession
from clinic.ledger.rows import insert
from tests.clinic.factories import ClinicFactory


def test_what_goes_in_comes_out_of_the_models(cast):
    cast.surgeon.accepted(*(records := [cast.surgeon.pen.patient() for _ in range(2)]))
    first, second = (uuid.UUID(record["id"]) for record in records)
    insert(Supersession, ("record", "superseded"), [(second, first)])

    (link,) = Supersession.objects.all()
    assert (link.record_id, link.superseded_id) == (second, first)


@pytest.mark.parametrize(
    "moment",
    [
        dt.datetime(2026, 11, 25, 9, 30, tzinfo=dt.UTC),
        dt.datetime(2026, 11, 25, 9, 30, 0, 120, tzinfo=dt.timezone(dt.timedelta(hours=-3))),
    ],
)
def test_a_moment_is_stored_as_the_models_store_it(cast, moment):
    saved = cast.surgeon.user.devices.get()
    saved.last_seen_at = moment
    saved.save()
    names = ("device_id", "user", "name", "registered_at", "last_seen_at")
    insert(type(saved), names, [(uuid.uuid4(), cast.surgeon.user.pk, "By rows", moment, moment)])

    stored = set(cast.surgeon.user.devices.extra(select={"bare": "last_seen_at"}).values_list("bare", flat=True))
    assert cast.surgeon.user.devices.filter(last_seen_at=moment).count() == 2
    assert len(stored) == 1


def test_one_row_that_cannot_enter_keeps_out_all(transactional_db):
    first, second = ClinicFactory(), ClinicFactory()
    FeedCounter.objects.create(clinic=second)
    rows = [(first.pk, uuid.uuid4(), 0), (second.pk, uuid.uuid4(), 0)]

    with pytest.raises(IntegrityError):
        insert(FeedCounter, ("clinic", "feed", "position"), rows)

    assert not FeedCounter.objects.filter(clinic=first).exists()


def test_whoever_swallows_the_error_commits_nothing(cast):
    def swallowing():
        with transaction.atomic():
            with pytest.raises(IntegrityError):
                insert(FeedCounter, ("clinic", "feed", "position"), [(cast.clinic.pk, uuid.uuid4(), 0)] * 2)
            return FeedCounter.objects.count()

    with pytest.raises(transaction.TransactionManagementError):
        swallowing()


def test_constraints_hold_and_their_errors_are_djangos_own(cast):
    with pytest.raises(IntegrityError), transaction.atomic():
        insert(FeedCounter, ("clinic", "feed", "position"), [(cast.clinic.pk, uuid.uuid4(), -1)])
