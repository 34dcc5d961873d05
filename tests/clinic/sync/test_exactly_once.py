"""A record enters once, however often it is sent, and by whichever way the answer is lost."""

import copy
import random
from concurrent.futures import ThreadPoolExecutor

import pytest
from django.db import connection

from clinic.ledger.models import Record
from clinic.sync import judge
from tests.clinic.cast import Person, sign_in


def test_a_record_is_accepted_at_the_next_position(cast):
    first, second = cast.surgeon.pen.patient(), cast.surgeon.pen.patient(hospital_number="H-2")

    results = cast.surgeon.results(first, second)

    assert [(result["id"], result["status"], result["position"]) for result in results] == [
        (first["id"], "accepted", 1),
        (second["id"], "accepted", 2),
    ]
    assert {result["code"] for result in results} == {None}


def test_the_same_push_again_gives_the_same_positions_as_duplicates_and_no_second_record(cast):
    records = [cast.surgeon.pen.patient(hospital_number=f"H-{number}") for number in range(5)]
    before = cast.surgeon.results(*records)

    after = cast.surgeon.results(*records)

    assert [result["status"] for result in after] == ["duplicate"] * 5
    places = [(result["position"], result["received_at"]) for result in before]
    assert [(result["position"], result["received_at"]) for result in after] == places
    assert Record.objects.count() == 5


def test_a_record_twice_in_one_push_enters_once(cast):
    record = cast.surgeon.pen.patient()

    results = cast.surgeon.results(record, record, cast.surgeon.pen.patient(hospital_number="H-2"))

    assert [(result["status"], result["position"]) for result in results] == [
        ("accepted", 1),
        ("duplicate", 1),
        ("accepted", 2),
    ]


def test_the_order_of_supersedes_and_of_the_bodys_keys_does_not_make_another_record(cast):
    pen = cast.surgeon.pen
    first = pen.patient()
    left, right = pen.patient_again(first, full_name="A"), pen.patient_again(first, full_name="B")
    settled = pen.patient_again(first, full_name="C") | {"supersedes": [left["id"], right["id"]]}
    cast.surgeon.accepted(first, left, right, settled)
    turned = settled | {
        "supersedes": [right["id"], left["id"]],
        "body": dict(reversed(settled["body"].items())),
    }

    assert cast.surgeon.results(turned)[0]["status"] == "duplicate"


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("digest", "0" * 64),
        ("kind", "examination"),
        ("patient", "0192f0c1-0000-7000-8000-000000000001"),
        ("recorded_at", "2026-11-25T09:30:01+01:00"),
        ("supersedes", ["0192f0c1-0000-7000-8000-000000000001"]),
        ("author", "jonas"),
        ("device", "0192f0c1-0000-7000-8000-000000000001"),
    ],
)
def test_the_same_id_with_anything_else_is_another_record_and_refused_for_good(cast, field, value):
    record = cast.surgeon.pen.patient()
    cast.surgeon.accepted(record)

    (result,) = cast.surgeon.results(record | {field: value})

    assert (result["status"], result["code"], result["retryable"]) == ("rejected", "id_reused", False)
    assert result["position"] is None


def test_the_same_id_with_another_content_in_one_push_is_refused(cast):
    record = cast.surgeon.pen.patient()
    other = cast.surgeon.pen.patient(full_name="Somebody Else") | {"id": record["id"], "patient": record["id"]}

    first, second = cast.surgeon.results(record, other)

    assert (first["status"], second["code"]) == ("accepted", "id_reused")


def test_an_id_of_another_clinic_is_refused_and_tells_nothing_of_that_record(cast):
    theirs = cast.stranger.pen.patient()
    cast.stranger.accepted(theirs)
    pen = cast.surgeon.pen
    mine = theirs | {"clinic": pen.clinic, "author": pen.author, "device": pen.device}

    (result,) = cast.surgeon.results(mine)

    assert (result["code"], result["position"], result["received_at"]) == ("id_reused", None, None)


def test_a_duplicate_stays_one_after_the_rules_have_become_stricter(cast, monkeypatch):
    """What was accepted once is answered from the ledger, not judged again."""
    record = cast.surgeon.pen.patient()
    cast.surgeon.accepted(record)
    monkeypatch.setattr("clinic.sync.judge.examine", lambda *_: pytest.fail("judged again"))

    assert cast.surgeon.results(record)[0]["status"] == "duplicate"


def meanwhile(monkeypatch, happens):
    """Between the look for the records and the lock, once."""
    honest, waiting = judge.examine, [happens]

    def examine(*arguments, **named):
        if waiting:
            waiting.pop()()
        return honest(*arguments, **named)

    monkeypatch.setattr(judge, "examine", examine)


def test_a_record_that_another_tab_brought_after_the_look_is_found_under_the_lock(cast, monkeypatch):
    records = [cast.surgeon.pen.patient(hospital_number=f"H-{number}") for number in range(2)]
    meanwhile(monkeypatch, lambda: cast.surgeon.accepted(records[1]))

    results = cast.surgeon.results(*records)

    assert [(result["status"], result["position"]) for result in results] == [("accepted", 2), ("duplicate", 1)]


def test_an_id_that_another_clinic_took_after_the_look_is_refused_and_the_others_enter(cast, monkeypatch):
    records = [cast.surgeon.pen.patient(hospital_number=f"H-{number}") for number in range(2)]
    theirs = cast.stranger.pen.patient() | {"id": records[1]["id"], "patient": records[1]["id"]}
    meanwhile(monkeypatch, lambda: cast.stranger.accepted(theirs))

    results = cast.surgeon.results(*records)

    assert [(result["status"], result["code"]) for result in results] == [("accepted", None), ("rejected", "id_reused")]


@pytest.mark.parametrize("seed", range(5))
def test_batches_repeated_reordered_and_cut_short_end_with_every_record_once(cast, seed):
    """The reply is lost now and then; the device sends again what it has no answer for, in any order."""
    chance = random.Random(seed)  # noqa: S311 - a seeded test
    pen = cast.orthoptist.pen
    patients = [pen.patient(hospital_number=f"H-{number}") for number in range(6)]
    waiting = [*patients, *(pen.examination(patient) for patient in patients)]
    everything = {record["id"] for record in waiting}
    for _ in range(200):
        batch = chance.sample(waiting, chance.randint(1, len(waiting)))
        results = cast.orthoptist.results(*batch)
        if chance.random() < 0.4:
            continue
        done = {result["id"] for result in results if result["status"] != "rejected"}
        assert all(result["retryable"] for result in results if result["status"] == "rejected")
        waiting = [record for record in waiting if record["id"] not in done]
        if not waiting:
            break

    pulled, _ = cast.surgeon.everything(limit=chance.randint(1, 7))

    assert not waiting
    assert [record["position"] for record in pulled] == list(range(1, 13))
    assert {record["id"] for record in pulled} == everything


def test_two_tabs_that_push_the_same_outbox_at_once_enter_it_once(committed_cast):
    surgeon = committed_cast.surgeon
    records = [surgeon.pen.patient(hospital_number=f"H-{number}") for number in range(20)]

    def push(seed):
        try:
            client = sign_in(surgeon.user, surgeon.device)
            mine = copy.copy(records)
            random.Random(seed).shuffle(mine)  # noqa: S311 - a seeded test
            tab = Person(surgeon.clinic, client, surgeon.device, surgeon.user)
            return [result["status"] for result in tab.results(*mine)]
        finally:
            connection.close()

    with ThreadPoolExecutor(4) as pool:
        statuses = [status for answer in pool.map(push, range(4)) for status in answer]

    assert (statuses.count("accepted"), statuses.count("duplicate")) == (20, 60)
    assert sorted(Record.objects.values_list("position", flat=True)) == list(range(1, 21))
