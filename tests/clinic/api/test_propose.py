"""The server's engine answers a case as the phone's does."""

import json

import pytest

from planner import desk
from tests.clinic.pen import EXAMINATION, TABLE

CASE = {"schema": 1, "examination": EXAMINATION, "table": TABLE}


def propose(person, case):
    return person.client.post("/api/v1/propose", json.dumps(case), content_type="application/json")


def test_the_answer_is_the_desks_answer(cast):
    said = json.loads(desk.answer(json.dumps({"ask": "propose", "case": CASE})))["answer"]

    response = propose(cast.surgeon, CASE)

    assert response.status_code == 200
    assert response.json() == said
    assert said["options"]


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"table": "no-such-table"}, "table"),
        ({"examination": {}}, "examination.schema"),
        ({"hurry": True}, "hurry"),
    ],
)
def test_a_fault_names_the_field_of_the_case(cast, change, field):
    response = propose(cast.surgeon, CASE | change)

    error = response.json()["errors"][0]
    assert (response.status_code, error["field"]) == (400, field)
    assert error["code"]
    assert error["text"]
