"""A record that cannot enter is told why, and holds nobody up."""

import hashlib
import uuid

import pytest
from django.db import DataError, IntegrityError

from clinic.ledger import commands
from clinic.ledger.models import Record
from clinic.sync import judge, kinds
from planner.canonical import digest
from tests.clinic.pen import uuid7


def reason(person, record):
    (result,) = person.results(record)
    assert result["status"] == "rejected"
    assert result["text"]
    return result["code"], result["field"], result["retryable"]


UNKNOWN = "0192f0c1-0000-7000-8000-000000000001"


@pytest.mark.parametrize(
    ("change", "expected"),
    [
        ({"id": "not-an-id"}, ("bad_pattern", "id", False)),
        ({"id": str(uuid.UUID(int=2**127, version=4))}, ("bad_pattern", "id", False)),
        ({"id": uuid7().upper()}, ("bad_pattern", "id", False)),
        ({"id": None}, ("wrong_type", "id", False)),
        ({"kind": "telegram"}, ("kind_unknown", "kind", False)),
        ({"kind": ["patient"]}, ("wrong_type", "kind", False)),
        ({"clinic": str(uuid.uuid4())}, ("clinic_differs", "clinic", False)),
        ({"author": "jonas"}, ("author_differs", "author", False)),
        ({"device": str(uuid.uuid4())}, ("device_unknown", "device", True)),
        ({"recorded_at": "2026-11-25T09:30:00"}, ("bad_date", "recorded_at", False)),
        ({"recorded_at": "2026-02-30T09:30:00Z"}, ("bad_date", "recorded_at", False)),
        ({"digest": "0" * 64}, ("digest_mismatch", "digest", False)),
        ({"digest": "0" * 63}, ("bad_pattern", "digest", False)),
        ({"supersedes": "everything"}, ("wrong_type", "supersedes", False)),
        ({"supersedes": [UNKNOWN, UNKNOWN]}, ("supersedes_repeated", "supersedes", False)),
        ({"body": {"schema": 1}}, ("missing", "body.full_name", False)),
        ({"body": []}, ("wrong_type", "body", False)),
        ({"urgent": True}, ("unknown_field", "urgent", False)),
    ],
)
def test_a_patients_record_with_a_fault_is_rejected_with_code_and_field(cast, change, expected):
    assert reason(cast.surgeon, cast.surgeon.pen.patient() | change) == expected


@pytest.mark.parametrize("field", ["id", "kind", "clinic", "patient", "author", "device", "recorded_at", "supersedes"])
def test_a_record_without_one_of_its_fields_is_rejected(cast, field):
    record = cast.surgeon.pen.patient()
    del record[field]

    assert reason(cast.surgeon, record) == ("missing", field, False)


@pytest.mark.parametrize("noise", [None, 5, "record", [], {}])
def test_what_is_no_record_is_rejected_and_the_others_enter(cast, noise):
    before, after = cast.surgeon.pen.patient(), cast.surgeon.pen.patient(hospital_number="H-2")

    statuses = [result["status"] for result in cast.surgeon.results(before, noise, after)]

    assert statuses == ["accepted", "rejected", "accepted"]


def test_a_character_that_no_database_takes_is_the_records_own_fault(cast):
    record = cast.surgeon.pen.patient()
    for name in ("Ines\x00", "Ines\ud800"):
        poison = record | {"body": record["body"] | {"full_name": name}}

        assert reason(cast.surgeon, poison) == ("bad_character", "body.full_name", False)
    assert reason(cast.surgeon, record | {"author": "a\x00"})[0] == "bad_character"


def test_a_record_that_names_itself_as_superseded_is_rejected(cast):
    record = cast.surgeon.pen.patient()

    assert reason(cast.surgeon, record | {"supersedes": [record["id"]]})[0] == "supersedes_itself"


def test_a_reference_that_is_not_there_yet_may_be_tried_again_and_then_enters(cast):
    patient = cast.orthoptist.pen.patient()
    measured = cast.orthoptist.pen.examination(patient)

    assert reason(cast.orthoptist, measured) == ("reference_unknown", "patient", True)

    cast.orthoptist.accepted(patient, measured)


def test_a_superseded_record_must_be_there(cast):
    pen = cast.surgeon.pen
    first = pen.patient()
    never_sent = pen.patient_again(first, full_name="Never Sent")
    cast.surgeon.accepted(first)

    assert reason(cast.surgeon, pen.patient_again(first, supersedes=never_sent)) == (
        "reference_unknown",
        "supersedes",
        True,
    )


def test_a_record_cannot_supersede_another_patients(cast):
    pen = cast.orthoptist.pen
    one, other = pen.patient(), pen.patient(hospital_number="H-2")
    measured = pen.examination(one)
    cast.orthoptist.accepted(one, other, measured)

    crossed = pen.examination(other) | {"supersedes": [measured["id"]]}

    assert reason(cast.orthoptist, crossed) == ("patient_differs", "supersedes", False)


def test_a_record_cannot_supersede_one_of_another_kind(cast):
    pen = cast.orthoptist.pen
    patient = pen.patient()
    cast.orthoptist.accepted(patient)

    assert reason(cast.orthoptist, pen.examination(patient) | {"supersedes": [patient["id"]]}) == (
        "reference_kind",
        "supersedes",
        False,
    )


def test_records_of_another_clinic_are_unknown_here(cast):
    theirs = cast.stranger.pen.patient()
    cast.stranger.accepted(theirs)

    assert reason(cast.surgeon, cast.surgeon.pen.examination(theirs))[0] == "reference_unknown"


def test_what_refers_to_a_poison_record_waits_and_the_rest_enters(cast):
    pen = cast.orthoptist.pen
    good, poison = pen.patient(), pen.patient(full_name="")
    batch = [poison, pen.examination(poison), good, pen.examination(good)]

    outcome = [(result["status"], result["retryable"]) for result in cast.orthoptist.results(*batch)]

    assert outcome == [("rejected", False), ("rejected", True), ("accepted", None), ("accepted", None)]


@pytest.mark.parametrize("step", ["examine", "admit"])
def test_a_record_that_the_server_stumbles_over_holds_nobody_up_and_is_tried_again(cast, monkeypatch, caplog, step):
    poison, good = (
        cast.surgeon.pen.patient(full_name="Stumbling Block"),
        cast.surgeon.pen.patient(hospital_number="H-2"),
    )
    honest = getattr(judge, step)

    def stumbling(*arguments, **named):
        if "Stumbling Block" in repr(arguments):
            raise ZeroDivisionError("Stumbling Block")
        return honest(*arguments, **named)

    monkeypatch.setattr(judge, step, stumbling)
    first, second = cast.surgeon.results(poison, good)

    assert (first["code"], first["retryable"], second["status"]) == ("server_fault", True, "accepted")
    assert "ZeroDivisionError at " in caplog.text
    assert "Stumbling Block" not in caplog.text


@pytest.mark.parametrize("objection", [IntegrityError, DataError])
def test_a_record_that_the_database_objects_to_is_set_apart_and_the_others_enter(cast, monkeypatch, objection):
    pen = cast.surgeon.pen
    records = [pen.patient(hospital_number=f"H-{number}") for number in range(4)]
    honest = commands.append

    def objecting(feed, entries, **options):
        if any(str(entry.id) == records[1]["id"] for entry in entries):
            raise objection
        return honest(feed, entries, **options)

    monkeypatch.setattr(commands, "append", objecting)
    results = cast.surgeon.results(*records)

    assert [result["status"] for result in results] == ["accepted", "rejected", "accepted", "accepted"]
    assert (results[1]["code"], results[1]["retryable"]) == ("server_fault", True)
    assert sorted(Record.objects.values_list("position", flat=True)) == [1, 2, 3]


def test_the_stored_body_is_canonical_and_its_own_digest(cast):
    record = cast.surgeon.pen.patient(note="Ω\n“quoted”")
    cast.surgeon.accepted(record)

    stored = Record.objects.get()

    assert stored.digest == digest(record["body"]) == hashlib.sha256(stored.body.encode()).hexdigest()


@pytest.mark.parametrize("clock", ["1999-01-01T00:00:00Z", "2199-12-31T23:59:59.999999-11:30"])
def test_a_wrong_clock_is_kept_as_it_is_and_not_judged(cast, clock):
    record = cast.surgeon.pen.patient() | {"recorded_at": clock}
    cast.surgeon.accepted(record)

    assert cast.surgeon.page()["records"][0]["recorded_at"] == clock


WRITERS = {
    "patient": {"surgeon", "orthoptist", "coordinator"},
    "examination": {"surgeon", "orthoptist"},
    "plan": {"surgeon", "orthoptist"},
    "signature": {"surgeon"},
    "retraction": {"surgeon", "orthoptist", "coordinator"},
    "dose_table": {"surgeon"},
    "join": {"surgeon", "orthoptist", "coordinator"},
    "theatre_check": {"surgeon", "orthoptist", "theatre_nurse"},
    "check_item": {"surgeon"},
    "practice": {"surgeon"},
    "set_up": {"surgeon"},
    "operating_list": {"surgeon", "coordinator"},
    "operation": {"surgeon"},
    "adjustment": {"surgeon"},
    "follow_up": {"surgeon", "orthoptist"},
    "notebook": {"surgeon"},
    "own_results": {"surgeon"},
}


def test_the_table_of_writers_names_every_kind():
    assert WRITERS.keys() == kinds.KINDS.keys()


@pytest.mark.parametrize("who", ["surgeon", "orthoptist", "theatre_nurse", "coordinator"])
@pytest.mark.parametrize("kind", sorted(WRITERS))
def test_only_the_roles_of_the_table_write_a_kind(cast, kind, who):
    """The body is empty on purpose: a role that may not write is refused before anything is read."""
    person = getattr(cast, who)
    code, *_ = reason(person, person.pen.record(kind, UNKNOWN, {}))

    assert (code == "role_may_not") == (who not in WRITERS[kind])
