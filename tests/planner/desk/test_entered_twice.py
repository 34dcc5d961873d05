"""The desk tells who may have been entered twice, by the ids that it was given."""

import json

import pytest

from planner import desk

ONE, OTHER, THIRD = (f"0192f0c1-0000-7000-8000-00000000000{number}" for number in (1, 2, 3))
INES = {"schema": 1, "full_name": "Ines Ferreira", "born_on": "2019-04-02", "hospital_number": "H-1042"}


def ask(*patients):
    return json.loads(desk.answer(json.dumps({"ask": "entered_twice", "patients": patients})))


def test_pairs_come_with_the_reason_in_the_order_given():
    said = ask(
        {"id": ONE, "body": INES},
        {"id": OTHER, "body": INES | {"full_name": "Inês Fereira", "hospital_number": "OI-7"}},
        {
            "id": THIRD,
            "body": INES | {"full_name": "Bram Tolsma", "born_on": "1971-10-30", "hospital_number": "h 1042"},
        },
    )

    assert said == {
        "answer": [
            {"first": ONE, "second": OTHER, "likeness": "similar_name_and_birth_date"},
            {"first": ONE, "second": THIRD, "likeness": "same_number"},
        ]
    }


def test_nobody_is_a_pair_with_nobody():
    assert ask() == {"answer": []}
    assert ask({"id": ONE, "body": INES}) == {"answer": []}


@pytest.mark.parametrize(
    ("patient", "field"),
    [
        ({"id": "somebody", "body": INES}, "patients.0.id"),
        ({"id": ONE, "body": INES | {"born_on": "spring"}}, "patients.0.body.born_on"),
    ],
)
def test_a_wrong_field_is_named_with_its_place(patient, field):
    (fault, *_) = ask(patient)["faults"]

    assert fault["field"] == field
