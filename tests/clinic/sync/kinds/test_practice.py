"""A clinic's own practice in theatre belongs to the clinic, and makes nothing usual that is refused to everybody."""

import pytest


def rejected(person, record):
    (result,) = person.results(record)
    return result["code"], result["field"], result["retryable"]


def test_a_practice_its_next_version_and_its_retraction_enter_and_theatre_has_them(cast):
    pen = cast.surgeon.pen
    first = pen.practice()
    second = pen.again(first, decided_by="Dr Ada Fern")
    taken_back = pen.retraction(second)
    cast.surgeon.accepted(first, second, taken_back)

    records, _ = cast.theatre_nurse.everything()

    assert [record["id"] for record in records] == [first["id"], second["id"], taken_back["id"]]


def test_a_first_version_must_carry_its_own_id(cast):
    first, other = cast.surgeon.pen.practice(), cast.surgeon.pen.practice()
    cast.surgeon.accepted(first)

    assert rejected(cast.surgeon, other | {"patient": first["id"]}) == ("practice_id_differs", "patient", False)


@pytest.mark.parametrize(
    ("body", "code", "field"),
    [
        (
            {"choices": [{"item": "needle", "choice": "reverse_cutting"}]},
            "never_reverse_cutting",
            "body.choices.0.choice",
        ),
        ({"choices": [{"item": "suture", "choice": "hemp"}]}, "choice_unknown", "body.choices.0.choice"),
        ({"choices": [{"item": "suture"}]}, "missing", "body.choices.0"),
        ({"figures": [{"name": "adjust_after_block_h", "value": 1}]}, "out_of_range", "body.figures.0.value"),
        (
            {"visits": [{"name": "Week 1", "first_day": 7, "last_day": 5}]},
            "visit_ends_first",
            "body.visits.0.last_day",
        ),
        ({"visits": []}, "too_short", "body.visits"),
        ({"figures": [{"name": "loupe_from_cm", "value": 60}]}, "not_in_order", "body.figures"),
        ({"reason": "so"}, "too_short", "body.reason"),
    ],
)
def test_what_cannot_be_a_practice_is_rejected_with_its_place(cast, body, code, field):
    assert rejected(cast.surgeon, cast.surgeon.pen.practice(**body)) == (code, field, False)


@pytest.mark.parametrize("who", ["orthoptist", "theatre_nurse", "coordinator"])
def test_a_surgeon_alone_decides_it(cast, who):
    person = getattr(cast, who)

    assert rejected(person, person.pen.practice())[0] == "role_may_not"
