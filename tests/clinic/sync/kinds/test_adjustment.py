"""An adjustment ends the window of an operation that the clinic knows, and moves only what can be moved."""

import copy

import pytest

from planner.canonical import digest
from tests.clinic.pen import uuid7


@pytest.fixture
def operation(cast):
    line = cast.surgeon.pen.line()
    done = cast.surgeon.pen.operation(line)
    cast.surgeon.accepted(*line, done)
    return done


def reason(person, record):
    (result,) = person.results(record)
    assert result["status"] == "rejected", result
    return result["code"], result["retryable"]


def moved(operation, place, mm=1):
    muscle = operation["body"]["muscles"][place]
    return {"eye": muscle["eye"], "muscle": muscle["muscle"], "way": "loosen", "mm": mm}


AFTER = [{"range": "distance", "horizontal_pd": 0}]


def test_a_suture_tied_as_it_was_enters_and_theatre_sees_it(cast, operation):
    cast.surgeon.accepted(cast.surgeon.pen.adjustment(operation))

    assert [record["kind"] for record in cast.theatre_nurse.everything()[0]].count("adjustment") == 1


def test_a_moved_suture_enters_with_what_it_did(cast, operation):
    pen = cast.surgeon.pen

    assert reason(cast.surgeon, pen.adjustment(operation, moved=[moved(operation, 0)])) == ("after_missing", False)
    cast.surgeon.accepted(pen.adjustment(operation, moved=[moved(operation, 0)], after=AFTER))


def test_a_fixed_suture_cannot_be_moved(cast, operation):
    record = cast.surgeon.pen.adjustment(operation, moved=[moved(operation, 1)], after=AFTER)

    assert reason(cast.surgeon, record) == ("not_adjustable", False)


def test_it_waits_for_its_operation(cast, operation):
    assert reason(cast.surgeon, cast.surgeon.pen.adjustment(operation, operation_id=uuid7())) == (
        "reference_unknown",
        True,
    )


def test_another_content_of_the_operation_is_not_what_was_adjusted(cast, operation):
    record = cast.surgeon.pen.adjustment(operation)
    body = copy.deepcopy(record["body"]) | {"operation_digest": "0" * 64}

    assert reason(cast.surgeon, record | {"body": body, "digest": digest(body)})[0] == "operation_digest_differs"


def test_nobody_but_a_surgeon_writes_it(cast, operation):
    assert reason(cast.orthoptist, cast.orthoptist.pen.adjustment(operation)) == ("role_may_not", False)
