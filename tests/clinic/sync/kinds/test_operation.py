"""Only a surgeon writes down what was done, by the very plan that was signed, with a reason wherever it differs."""

import copy

import pytest

from clinic.people.role import Role
from planner.canonical import digest
from tests.clinic.cast import Person, sign_in
from tests.clinic.factories import DeviceFactory, MembershipFactory, UserFactory
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


@pytest.fixture
def assistant(cast):
    """Another surgeon of the clinic, on a device of their own."""
    user = UserFactory(username="edda", full_name="Dr Edda Roan")
    MembershipFactory(user=user, clinic=cast.clinic, role=Role.SURGEON)
    device = str(DeviceFactory(user=user).device_id)
    return Person(cast.clinic, sign_in(user, device), device, user)


def test_nobody_writes_an_operation_in_another_surgeons_name(line, assistant):
    as_the_surgeon = assistant.pen.operation(line, surgeon_name="Dr Amara Okonjo")
    as_if_written_by = assistant.pen.operation(line, recorded_by="Dr Amara Okonjo")

    assert reason(assistant, as_the_surgeon) == ("recorder_differs", "body.surgeon_name", False)
    assert reason(assistant, as_if_written_by) == ("recorder_differs", "body.recorded_by", False)


def test_an_assistant_writes_for_the_surgeon_who_signed_and_both_are_named(line, assistant):
    assistant.accepted(assistant.pen.operation(line, surgeon_name="Dr Amara Okonjo", recorded_by="Dr Edda Roan"))


def test_an_assistant_writes_for_nobody_whom_no_record_names(line, assistant):
    record = assistant.pen.operation(line, surgeon_name="Dr Somebody Else", recorded_by="Dr Edda Roan")

    assert reason(assistant, record) == ("surgeon_unknown", "body.surgeon_name", False)


def test_another_surgeon_operates_by_the_plan_and_whoever_corrects_the_record_keeps_that_name(cast, line, assistant):
    operated = assistant.pen.operation(line)
    assistant.accepted(operated)
    again = cast.surgeon.pen.again(operated, recorded_by="Dr Amara Okonjo", note="Corrected.")

    assert again["body"]["surgeon_name"] == "Dr Edda Roan"
    cast.surgeon.accepted(again)


def test_an_adjustment_is_written_by_whoever_adjusted_or_for_the_surgeon_who_operated(cast, line, assistant):
    operated = cast.surgeon.pen.operation(line)
    cast.surgeon.accepted(operated)
    pen = assistant.pen
    falsely = pen.adjustment(operated, surgeon_name="Dr Amara Okonjo")
    unknown = pen.adjustment(operated, surgeon_name="Dr Somebody Else", recorded_by="Dr Edda Roan")

    assert reason(assistant, falsely) == ("recorder_differs", "body.surgeon_name", False)
    assert reason(assistant, unknown) == ("surgeon_unknown", "body.surgeon_name", False)
    assistant.accepted(pen.adjustment(operated, surgeon_name="Dr Amara Okonjo", recorded_by="Dr Edda Roan"))
