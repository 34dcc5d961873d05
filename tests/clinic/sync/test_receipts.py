"""What the server once took it takes again, by anybody's hand, and nothing that it did not."""

import base64
import json
import random
import re

import pytest
from django.test import override_settings
from django.utils.crypto import salted_hmac
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.extra.django import TestCase

from clinic.ledger.commands import renew_feed
from clinic.ledger.models import FeedCounter, Record, Supersession
from clinic.sync.envelope import split
from clinic.sync.receipt import is_genuine, receipt_of
from tests.clinic.cast import assemble
from tests.clinic.lost import lose_all_after

ELSEWHERE = "another server's secret, as long as it must be in production"


def held(records):
    """Pulled records as a device sends them again."""
    return [
        {name: value for name, value in each.items() if name not in ("position", "received_at")} for each in records
    ]


def test_every_answer_about_a_stored_record_carries_the_same_receipt(cast):
    record = cast.surgeon.pen.patient()

    (accepted,) = cast.surgeon.results(record)
    (duplicate,) = cast.surgeon.results(record)
    (pulled,) = cast.orthoptist.page()["records"]

    assert re.fullmatch(r"[A-Za-z0-9_-]{22}", accepted["receipt"])
    assert accepted["receipt"] == duplicate["receipt"] == pulled["receipt"]


def test_a_rejected_record_has_none(cast):
    (result,) = cast.surgeon.results(cast.surgeon.pen.patient() | {"digest": "0" * 64})

    assert (result["status"], result["receipt"]) == ("rejected", None)


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("id", "0192f0c1-0000-7000-8000-000000000001"),
        ("clinic", "0192f0c1-0000-7000-8000-000000000001"),
        ("patient", "0192f0c1-0000-7000-8000-000000000001"),
        ("device", "0192f0c1-0000-7000-8000-000000000001"),
        ("supersedes", ["0192f0c1-0000-7000-8000-000000000001"]),
        ("kind", "plan"),
        ("author", "jonas"),
        ("recorded_at", "2026-11-25T09:30:01+01:00"),
        ("digest", "0" * 64),
    ],
)
def test_a_receipt_is_of_every_part_of_the_envelope(cast, field, value):
    record = cast.surgeon.pen.examination(cast.surgeon.pen.patient())
    receipt = receipt_of(split(record).envelope)

    assert is_genuine(receipt, split(record).envelope)
    assert not is_genuine(receipt, split(record | {field: value}).envelope)


def test_the_order_of_what_it_supersedes_does_not_matter(cast):
    pen = cast.surgeon.pen
    older = [pen.patient()["id"], pen.patient()["id"]]
    record = pen.patient() | {"supersedes": older}

    assert is_genuine(receipt_of(split(record).envelope), split(record | {"supersedes": older[::-1]}).envelope)


def test_a_receipt_outlives_a_new_secret_as_long_as_the_former_one_is_named(cast, settings):
    envelope = split(cast.surgeon.pen.patient()).envelope
    receipt = receipt_of(envelope)
    former = settings.SECRET_KEY

    settings.SECRET_KEY = ELSEWHERE
    assert not is_genuine(receipt, envelope)
    settings.SECRET_KEY_FALLBACKS = [former]
    assert is_genuine(receipt, envelope)
    assert receipt_of(envelope) != receipt


def test_a_receipt_is_made_as_it_always_was(cast):
    """Devices hold receipts for years: by the framework's own derivation of the key, over the same text."""
    envelope = split(cast.surgeon.pen.patient() | {"supersedes": ["b" * 8 + "-bbbb-7bbb-8bbb-" + "b" * 12]}).envelope
    text = json.dumps(vars(envelope) | {"supersedes": sorted(envelope.supersedes)}, sort_keys=True)
    made = salted_hmac("clinic.sync.receipt.1", text.replace(", ", ",").replace(": ", ":"), algorithm="sha256")

    assert receipt_of(envelope) == base64.urlsafe_b64encode(made.digest()[:16]).decode().rstrip("=")


@pytest.mark.parametrize("by", ["orthoptist", "theatre_nurse", "coordinator", "surgeon"])
def test_a_restored_server_takes_the_whole_line_from_whoever_held_it(cast, by):
    cast.surgeon.accepted(*cast.surgeon.pen.line())
    records = held(cast.orthoptist.page()["records"])
    lose_all_after(cast.clinic, 0)

    getattr(cast, by).accepted(*records)

    assert held(cast.orthoptist.page()["records"]) == records
    assert {record.author_id for record in Record.objects.all()} == {"amara"}


def test_what_was_allowed_in_its_time_comes_back_in_any_order(cast):
    """A plan that was signed, then replaced; and a record that was taken back by another role's hand."""
    pen = cast.surgeon.pen
    who, measured, planned, signed = pen.line()
    replaced = pen.plan(who, measured, place=1, supersedes=planned)
    cast.surgeon.accepted(who, measured, planned, signed)
    cast.surgeon.accepted(replaced, pen.retraction(measured))
    records = held(cast.surgeon.page()["records"])
    lose_all_after(cast.clinic, 0)

    order = [0, 1, 2, 4, 5, 3]
    cast.theatre_nurse.accepted(*(records[place] for place in order))

    assert Record.objects.count() == 6


def test_what_it_refers_to_must_be_there_first(cast):
    cast.surgeon.accepted(*cast.surgeon.pen.line())
    who, measured, planned, signed = held(cast.surgeon.page()["records"])
    lose_all_after(cast.clinic, 0)

    results = cast.theatre_nurse.results(who, planned, signed)

    assert [result["status"] for result in results] == ["accepted", "rejected", "rejected"]
    assert {(result["code"], result["retryable"]) for result in results[1:]} == {("reference_unknown", True)}
    cast.orthoptist.accepted(measured)
    cast.theatre_nurse.accepted(planned, signed)


@pytest.mark.parametrize(
    "change", [{"receipt": "A" * 22}, {"receipt": ""}, {"recorded_at": "2026-11-25T09:30:01+01:00"}]
)
def test_another_persons_record_without_a_genuine_receipt_is_refused_for_good(cast, change):
    cast.surgeon.accepted(cast.surgeon.pen.patient())
    (record,) = held(cast.surgeon.page()["records"])
    lose_all_after(cast.clinic, 0)

    (result,) = cast.orthoptist.results(record | change)

    assert (result["code"], result["field"], result["retryable"]) == ("receipt_invalid", "receipt", False)


def test_a_receipt_does_not_cover_another_body(cast):
    cast.surgeon.accepted(cast.surgeon.pen.patient())
    (record,) = held(cast.surgeon.page()["records"])
    lose_all_after(cast.clinic, 0)

    (result,) = cast.orthoptist.results(record | {"body": record["body"] | {"full_name": "Somebody Else"}})

    assert result["code"] == "digest_mismatch"


def test_ones_own_record_with_a_receipt_of_no_worth_is_judged_as_if_it_had_none(cast):
    record = cast.surgeon.pen.patient()

    cast.surgeon.accepted(record | {"receipt": "of a server whose secret is gone"})
    (result,) = cast.theatre_nurse.results(cast.theatre_nurse.pen.patient() | {"receipt": "of another"})

    assert result["code"] == "role_may_not"


def test_a_receipt_is_good_in_its_own_clinic_alone(cast):
    cast.surgeon.accepted(cast.surgeon.pen.patient())
    (record,) = held(cast.surgeon.page()["records"])

    (result,) = cast.stranger.results(record | {"id": "0192f0c1-0000-7000-8000-000000000001"})

    assert result["code"] == "clinic_differs"


def test_a_receipt_that_is_no_text_is_told_with_its_field(cast):
    (result,) = cast.surgeon.results(cast.surgeon.pen.patient() | {"receipt": 7})

    assert (result["code"], result["field"]) == ("bad_type", "receipt")


def test_the_record_of_an_account_that_the_backup_lacks_waits_for_the_account(cast):
    record = cast.surgeon.pen.patient() | {"author": "ilse"}
    receipted = record | {"receipt": receipt_of(split(record).envelope)}

    (result,) = cast.orthoptist.results(receipted)
    assert (result["code"], result["field"], result["retryable"]) == ("author_unknown", "author", True)

    cast.stranger.user.username = "ilse"
    cast.stranger.user.save()
    cast.orthoptist.accepted(receipted)


def test_a_reset_tells_a_restored_ledger_from_another_scope(cast):
    cast.surgeon.accepted(*cast.surgeon.pen.line())
    cursors = {role: getattr(cast, role).page()["cursor"] for role in ("surgeon", "theatre_nurse")}

    page = cast.theatre_nurse.page(cursors["surgeon"])
    assert (page["reset"], page["restored"]) == (True, False)
    with override_settings(THEATRE_DAYS=3):
        page = cast.theatre_nurse.page(cursors["theatre_nurse"])
        assert (page["reset"], page["restored"]) == (True, False)
    renew_feed(cast.clinic.pk)
    for role, cursor in cursors.items():
        page = getattr(cast, role).page(cursor)
        assert (page["reset"], page["restored"]) == (True, True)
    assert cast.surgeon.page("no cursor at all")["restored"] is True
    assert cast.surgeon.page()["restored"] is False


class RestoreAtAnyPoint(TestCase):
    """Whatever the backup had, what any two devices held comes back, each once."""

    @settings(max_examples=12, deadline=None)
    @given(kept=st.integers(0, 7), seen=st.integers(0, 7), seed=st.integers(0, 2**32))
    def test_nothing_that_a_device_held_is_lost(self, kept, seen, seed):
        cast = assemble()
        pen = cast.surgeon.pen
        who, measured, planned, signed = pen.line()
        later = pen.plan(who, measured, place=1, supersedes=planned)
        cast.surgeon.accepted(who, measured, planned, signed, later, pen.retraction(later))
        cast.orthoptist.accepted(cast.orthoptist.pen.patient_again(who, full_name="Ines Ferreira Lobo"))
        feed = held(cast.coordinator.page()["records"])
        lose_all_after(cast.clinic, kept)
        devices = [(cast.orthoptist, feed[:seen]), (cast.coordinator, feed)]
        random.Random(seed).shuffle(devices)  # noqa: S311 - an order, no secret

        for person, records in devices * 2:
            there = {record["id"] for record in person.page()["records"]}
            person.results(*(record for record in records if record["id"] not in there))

        again = held(cast.surgeon.page()["records"])
        assert sorted(again, key=str) == sorted(feed, key=str)
        assert FeedCounter.objects.get(clinic=cast.clinic).position == Record.objects.count() == len(feed)
        assert Supersession.objects.count() == 2
