"""A visit after an operation enters with the very examination that was measured at it, on its day."""

import copy

import pytest

from planner.canonical import digest
from tests.clinic.pen import uuid7

SEEN_ON = "2026-12-02"


@pytest.fixture
def line(cast):
    line = cast.surgeon.pen.line()
    cast.surgeon.accepted(*line)
    return line


@pytest.fixture
def operation(cast, line):
    done = cast.surgeon.pen.operation(line)
    cast.surgeon.accepted(done)
    return done


@pytest.fixture
def examination(cast, line):
    measured = cast.surgeon.pen.examination(line[0], examined_on=SEEN_ON)
    cast.surgeon.accepted(measured)
    return measured


def reason(person, record):
    (result,) = person.results(record)
    assert result["status"] == "rejected", result
    return result["code"], result["retryable"]


def altered(record, **fields):
    body = copy.deepcopy(record["body"]) | fields
    return record | {"body": body, "digest": digest(body)}


def test_a_measured_visit_enters_and_theatre_is_not_handed_it(cast, operation, examination):
    cast.orthoptist.accepted(cast.orthoptist.pen.follow_up(operation, examination))

    assert "follow_up" in {record["kind"] for record in cast.surgeon.everything()[0]}
    assert "follow_up" not in {record["kind"] for record in cast.theatre_nurse.everything()[0]}


def test_a_visit_without_a_measurement_enters_too(cast, operation):
    signs = [{"sign": "growing pain", "eye": "right"}]

    cast.surgeon.accepted(cast.surgeon.pen.follow_up(operation, infection_signs=signs))


def test_a_visit_can_be_corrected_and_taken_back(cast, operation):
    pen = cast.surgeon.pen
    first = pen.follow_up(operation)
    second = pen.follow_up(operation, note="The parents telephoned.") | {"supersedes": [first["id"]]}
    cast.surgeon.accepted(first, second)

    cast.surgeon.accepted(pen.retraction(second))


def test_a_correction_stays_with_the_same_operation(cast, line, operation):
    pen = cast.surgeon.pen
    first, other = pen.follow_up(operation), pen.operation(line)
    cast.surgeon.accepted(first, other)

    assert reason(cast.surgeon, pen.follow_up(other) | {"supersedes": [first["id"]]}) == ("other_operation", False)


@pytest.mark.parametrize(
    ("fields", "refused"),
    [
        ({"operation_id": uuid7()}, ("reference_unknown", True)),
        ({"examination_id": uuid7()}, ("reference_unknown", True)),
        ({"examination_digest": "0" * 64}, ("examination_digest_differs", False)),
        ({"seen_on": "2026-12-03"}, ("other_day", False)),
        ({"examination_digest": None}, ("missing", False)),
        ({"ahead": [{"name": "Month 2", "first_day": 60, "last_day": 50}]}, ("visit_ends_first", False)),
        ({"ahead": [{"name": "Day 1", "first_day": 1, "last_day": 2}]}, ("visit_lies_behind", False)),
    ],
)
def test_what_does_not_fit_is_told(cast, operation, examination, fields, refused):
    record = altered(cast.surgeon.pen.follow_up(operation, examination), **fields)

    assert reason(cast.surgeon, record) == refused


def test_nobody_is_seen_after_an_operation_before_it(cast, operation):
    record = cast.surgeon.pen.follow_up(operation, seen_on="2026-11-24")

    assert reason(cast.surgeon, record) == ("seen_before_operation", False)


@pytest.mark.parametrize("who", ["theatre_nurse", "coordinator"])
def test_only_who_measures_writes_it(cast, operation, who):
    person = getattr(cast, who)

    assert reason(person, person.pen.follow_up(operation)) == ("role_may_not", False)
