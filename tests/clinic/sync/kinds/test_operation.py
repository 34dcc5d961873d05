"""Only a surgeon writes down what was done, by the very plan that was signed, with a reason wherever it differs."""

import copy

import pytest

from planner.canonical import digest
from tests.clinic.pen import uuid7


@pytest.fixture
def line(cast):
    """A signed plan that the clinic knows."""
    known = cast.surgeon.pen.line()
    cast.surgeon.accepted(*known)
    return known


def altered(record, **body):
    body = copy.deepcopy(record["body"]) | body
    return record | {"body": body, "digest": digest(body)}


def with_muscle(record, **fields):
    first, *others = copy.deepcopy(record["body"]["muscles"])
    return altered(record, muscles=[first | fields, *others])


def reason(person, record):
    (result,) = person.results(record)
    assert result["status"] == "rejected", result
    return result["code"], result["field"], result["retryable"]


def test_what_was_done_enters_and_theatre_sees_it(cast, line):
    done = cast.surgeon.pen.operation(line)
    cast.surgeon.accepted(done)

    assert [record["kind"] for record in cast.theatre_nurse.everything()[0]].count("operation") == 1


def test_the_whole_line_enters_in_one_push(cast):
    line = cast.surgeon.pen.line()
    cast.surgeon.accepted(*line, cast.surgeon.pen.operation(line))


@pytest.mark.parametrize("who", ["orthoptist", "theatre_nurse", "coordinator"])
def test_nobody_but_a_surgeon_writes_it(cast, line, who):
    person = getattr(cast, who)

    assert reason(person, person.pen.operation(line))[0] == "role_may_not"


@pytest.mark.parametrize(
    ("changed", "code", "field"),
    [
        ({"plan_digest": "0" * 64}, "plan_digest_differs", "body.plan_digest"),
        ({"signature_digest": "0" * 64}, "signature_digest_differs", "body.signature_digest"),
        ({"window": None}, "window_differs", "body.window"),
        ({"tied_at": None, "window": None}, "tied_at_missing", "body.tied_at"),
    ],
)
def test_what_does_not_fit_is_refused(cast, line, changed, code, field):
    assert reason(cast.surgeon, altered(cast.surgeon.pen.operation(line), **changed)) == (code, field, False)


def test_it_waits_for_its_signature(cast, line):
    assert reason(cast.surgeon, altered(cast.surgeon.pen.operation(line), signature_id=uuid7()))[::2] == (
        "reference_unknown",
        True,
    )


def test_the_signature_of_another_patient_is_refused(cast, line):
    other = cast.surgeon.pen.line(hospital_number="H-2")
    cast.surgeon.accepted(*other)
    strange = altered(cast.surgeon.pen.operation(line), signature_id=other[3]["id"])

    assert reason(cast.surgeon, strange)[0] == "patient_differs"


def test_another_operation_than_planned_enters_with_its_reason_alone(cast, line):
    done = {"operation": "recess", "mm": 5.0, "offset": None}
    without = with_muscle(cast.surgeon.pen.operation(line), done=done)

    assert reason(cast.surgeon, without) == ("reason_missing", "body.muscles.0.reason", False)
    cast.surgeon.accepted(with_muscle(cast.surgeon.pen.operation(line), done=done, reason="Tight on traction."))


def test_what_the_record_calls_planned_is_what_was_signed(cast, line):
    planned = {"operation": "recess", "mm": 5.0, "offset": None}
    false = with_muscle(cast.surgeon.pen.operation(line), planned=planned, done=planned)

    assert reason(cast.surgeon, false)[0] == "planned_differs"


def test_a_cutting_needle_in_sclera_is_refused(cast, line):
    assert reason(cast.surgeon, with_muscle(cast.surgeon.pen.operation(line), needle="reverse cutting"))[0] == (
        "cutting_needle_in_sclera"
    )


def test_it_enters_after_the_plan_was_replaced_for_it_is_what_happened(cast, line):
    again = cast.surgeon.pen.again(line[2])
    cast.surgeon.accepted(again, cast.surgeon.pen.operation(line))


def test_a_correction_is_of_the_same_operation(cast, line):
    first = cast.surgeon.pen.operation(line)
    cast.surgeon.accepted(first)
    cast.surgeon.accepted(cast.surgeon.pen.again(first, note="The block was given later."))

    other = cast.surgeon.pen.signature(line[2])
    strange = cast.surgeon.pen.operation([*line[:3], other]) | {"supersedes": [first["id"]]}
    cast.surgeon.accepted(other)
    assert reason(cast.surgeon, strange)[0] == "other_signature"
