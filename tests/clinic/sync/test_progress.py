"""A device is brought past what it sent itself, and past nothing else: it never misses another's record."""

import random

import pytest

from clinic.ledger.commands import renew_feed
from clinic.ledger.models import FeedCounter


def patients(person, count):
    return [person.pen.patient(hospital_number=f"{person.user.username}-{number}") for number in range(count)]


def pushed(person, after, *records):
    return person.push(*records, after=after).json()


def test_what_it_sent_itself_need_not_be_fetched_back(cast):
    start = cast.surgeon.page()["cursor"]

    answer = pushed(cast.surgeon, start, *patients(cast.surgeon, 3))

    assert answer["more"] is False
    assert answer["cursor"] == cast.surgeon.everything(start)[1]
    assert cast.surgeon.page(answer["cursor"])["records"] == []


def test_a_lost_answer_is_made_good_by_sending_again(cast):
    start = cast.surgeon.page()["cursor"]
    records = patients(cast.surgeon, 3)
    first = pushed(cast.surgeon, start, *records)

    again = pushed(cast.surgeon, start, *records)

    assert (again["cursor"], again["more"]) == (first["cursor"], False)


def test_anothers_record_in_between_is_left_to_the_pull(cast):
    start = cast.surgeon.page()["cursor"]
    own, others = patients(cast.surgeon, 3), patients(cast.orthoptist, 1)
    cast.surgeon.accepted(own[0])
    cast.orthoptist.accepted(*others)

    answer = pushed(cast.surgeon, start, *own)

    assert answer["more"] is True
    records, _ = cast.surgeon.everything(answer["cursor"])
    assert [record["id"] for record in records] == [record["id"] for record in (*others, *own[1:])]


def test_anothers_later_record_is_told_of(cast):
    start = cast.surgeon.page()["cursor"]
    own = patients(cast.surgeon, 2)
    cast.surgeon.accepted(*own)
    (later,) = patients(cast.orthoptist, 1)
    cast.orthoptist.accepted(later)

    answer = pushed(cast.surgeon, start, *own)

    assert answer["more"] is True
    assert [record["id"] for record in cast.surgeon.page(answer["cursor"])["records"]] == [later["id"]]


def test_a_refused_record_brings_nobody_anywhere(cast):
    start = cast.surgeon.page()["cursor"]
    good, bad = patients(cast.surgeon, 2)

    answer = pushed(cast.surgeon, start, bad | {"digest": "0" * 64}, good)

    assert [result["status"] for result in answer["results"]] == ["rejected", "accepted"]
    assert answer["cursor"] == cast.surgeon.everything(start)[1]


@pytest.mark.parametrize("after", ["", "no cursor", "9" * 500])
def test_without_a_cursor_of_this_feed_the_pull_tells_all(cast, after):
    answer = pushed(cast.surgeon, after, *patients(cast.surgeon, 1))

    assert (answer["cursor"], answer["more"]) == (None, True)


def test_after_a_restored_backup_the_old_cursor_moves_nowhere(cast):
    start = cast.surgeon.page()["cursor"]
    renew_feed(cast.clinic.pk)

    answer = pushed(cast.surgeon, start, *patients(cast.surgeon, 1))

    assert (answer["cursor"], answer["more"]) == (None, True)


def test_another_clinics_cursor_moves_nowhere(cast):
    answer = pushed(cast.surgeon, cast.stranger.page()["cursor"], *patients(cast.surgeon, 1))

    assert (answer["cursor"], answer["more"]) == (None, True)


def test_a_cursor_beyond_the_feed_moves_nowhere(cast):
    cast.surgeon.accepted(*patients(cast.surgeon, 3))
    _, cursor = cast.surgeon.everything()
    FeedCounter.objects.update(position=2)

    answer = pushed(cast.surgeon, cursor)

    assert (answer["cursor"], answer["more"]) == (None, True)


def test_theatre_always_pulls(cast):
    start = cast.theatre_nurse.page()["cursor"]

    answer = pushed(cast.theatre_nurse, start)

    assert (answer["cursor"], answer["more"]) == (None, True)


def test_a_push_of_nothing_says_whether_there_is_news(cast):
    start = cast.surgeon.page()["cursor"]
    assert pushed(cast.surgeon, start)["more"] is False

    cast.orthoptist.accepted(*patients(cast.orthoptist, 1))

    answer = pushed(cast.surgeon, start)
    assert (answer["cursor"], answer["more"]) == (start, True)


def test_a_cursor_is_text(cast):
    response = cast.surgeon.push(after=5)

    assert (response.status_code, response.json()["errors"][0]["field"]) == (400, "after")


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
        answer = pushed(person, cursors[person], *new, *draw.sample(new, k=len(new) // 2))
        sent += [record["id"] for record in new]
        held[person] += [record["id"] for record in new]
        cursors[person] = answer["cursor"]
        if not answer["more"]:
            assert sorted(held[person]) == sorted(sent)

    for person in people:
        records, _ = person.everything(cursors[person])
        new = [record["id"] for record in records if record["id"] not in held[person]]
        assert sorted(held[person] + new) == sorted(sent)
