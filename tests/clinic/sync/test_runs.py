"""A device is brought past what it sent itself, and past nothing else: it never misses another's record."""

import random

import pytest

from clinic.ledger.commands import renew_feed


def patients(person, count):
    return [person.pen.patient(hospital_number=f"{person.user.username}-{number}") for number in range(count)]


def pushed(person, *records):
    return person.push(*records).json()


def along(runs, cursor):
    """Where a device that stands at the cursor comes to, and whether the feed goes on there."""
    by_start = {run["after"]: run for run in runs}
    more = True
    while run := by_start.pop(cursor, None):
        cursor, more = run["cursor"], run["more"]
    return cursor, more


def test_what_it_sent_itself_need_not_be_fetched_back(cast):
    start = cast.surgeon.page()["cursor"]

    answer = pushed(cast.surgeon, *patients(cast.surgeon, 3))

    assert answer["runs"] == [{"after": start, "cursor": cast.surgeon.everything(start)[1], "more": False}]


def test_a_lost_answer_is_made_good_by_sending_again(cast):
    records = patients(cast.surgeon, 3)
    first = pushed(cast.surgeon, *records)

    assert pushed(cast.surgeon, *records)["runs"] == first["runs"]


def test_answers_lead_on_from_each_other_whichever_comes_first(cast):
    start = cast.surgeon.page()["cursor"]
    first, second = (pushed(cast.surgeon, *patients(cast.surgeon, 2))["runs"] for _ in range(2))

    assert along([*second, *first], start) == (cast.surgeon.everything(start)[1], False)


def test_anothers_record_in_between_is_left_to_the_pull(cast):
    start = cast.surgeon.page()["cursor"]
    own, others = patients(cast.surgeon, 3), patients(cast.orthoptist, 1)
    cast.surgeon.accepted(own[0])
    cast.orthoptist.accepted(*others)

    cursor, more = along(pushed(cast.surgeon, *own)["runs"], start)

    assert more is True
    records, _ = cast.surgeon.everything(cursor)
    assert [record["id"] for record in records] == [record["id"] for record in (*others, *own[1:])]


def test_anothers_later_record_is_told_of(cast):
    start = cast.surgeon.page()["cursor"]
    own = patients(cast.surgeon, 2)
    cast.surgeon.accepted(*own)
    (later,) = patients(cast.orthoptist, 1)
    cast.orthoptist.accepted(later)

    cursor, more = along(pushed(cast.surgeon, *own)["runs"], start)

    assert more is True
    assert [record["id"] for record in cast.surgeon.page(cursor)["records"]] == [later["id"]]


def test_a_refused_record_is_in_no_run(cast):
    start = cast.surgeon.page()["cursor"]
    good, bad = patients(cast.surgeon, 2)

    answer = pushed(cast.surgeon, bad | {"digest": "0" * 64}, good)

    assert [result["status"] for result in answer["results"]] == ["rejected", "accepted"]
    assert along(answer["runs"], start) == (cast.surgeon.everything(start)[1], False)


def test_a_push_of_nothing_fills_nothing(cast):
    assert pushed(cast.surgeon)["runs"] == []


def test_after_a_restored_backup_no_run_begins_at_an_old_cursor(cast):
    start = cast.surgeon.page()["cursor"]
    renew_feed(cast.clinic.pk)

    (run,) = pushed(cast.surgeon, *patients(cast.surgeon, 1))["runs"]

    assert run["after"] not in (start, "")


def test_theatre_always_pulls(cast):
    records = patients(cast.surgeon, 2)
    cast.surgeon.accepted(*records)

    answer = pushed(cast.theatre_nurse, *records)

    assert [result["status"] for result in answer["results"]] == ["duplicate", "duplicate"]
    assert answer["runs"] == []


@pytest.mark.parametrize("drawn", range(8))
def test_two_devices_that_push_and_pull_in_any_order_both_end_with_all(cast, drawn):
    draw = random.Random(drawn)  # noqa: S311 - a seeded test
    people = (cast.surgeon, cast.orthoptist)
    cursors = {person: person.page()["cursor"] for person in people}
    held = {person: [] for person in people}
    sent = []
    for number in range(12):
        person = draw.choice(people)
        if draw.random() < 0.3:
            records, cursors[person] = person.everything(cursors[person])
            held[person] += [record["id"] for record in records if record["id"] not in held[person]]
            continue
        new = [person.pen.patient(hospital_number=f"{number}-{at}") for at in range(draw.randint(0, 3))]
        answer = pushed(person, *new, *draw.sample(new, k=len(new) // 2))
        sent += [record["id"] for record in new]
        held[person] += [record["id"] for record in new]
        cursors[person], more = along(answer["runs"], cursors[person])
        if not more:
            assert sorted(held[person]) == sorted(sent)

    for person in people:
        records, _ = person.everything(cursors[person])
        new = [record["id"] for record in records if record["id"] not in held[person]]
        assert sorted(held[person] + new) == sorted(sent)
