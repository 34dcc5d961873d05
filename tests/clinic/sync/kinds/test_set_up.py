"""How an operation is set up speaks of one plan, and nothing enters that a stop forbids."""

import pytest

from tests.clinic.pen import uuid7

REASON = "The patient asked for it, and the team is used to it."


def rejected(person, record):
    (result,) = person.results(record)
    return result["code"], result["field"], result["retryable"]


@pytest.fixture
def line(cast):
    """A child whose both medial recti are planned and signed."""
    records = cast.surgeon.pen.line()
    cast.surgeon.accepted(*records)
    return records


def test_a_set_up_and_its_next_version_enter_and_theatre_has_them_with_the_card(cast, line):
    pen, plan = cast.surgeon.pen, line[2]
    first = pen.set_up(plan)
    second = pen.again(first, wishes={"cooperation": "no"})
    cast.surgeon.accepted(first, second)

    records, _ = cast.theatre_nurse.everything()

    assert {first["id"], second["id"]} <= {record["id"] for record in records}


def test_a_set_up_of_a_plan_that_nobody_signed_stays_from_theatre(cast):
    pen = cast.surgeon.pen
    who = pen.patient()
    measured = pen.examination(who)
    plan = pen.plan(who, measured)
    cast.surgeon.accepted(who, measured, plan, pen.set_up(plan))

    assert cast.theatre_nurse.everything()[0] == []


@pytest.mark.parametrize(
    ("item", "choice", "code"),
    [
        ("needle", "cutting", "never_cutting"),
        ("needle", "reverse_cutting", "never_reverse_cutting"),
        ("anaesthesia", "block", "block_both_eyes"),
        ("anaesthesia", "drops", "drops_in_a_child"),
        ("magnification", "naked_eye", "never_naked_eye"),
        ("suture", "hemp", "choice_unknown"),
    ],
)
def test_a_choice_that_a_stop_forbids_is_rejected_whatever_the_reason(cast, line, item, choice, code):
    override = {"item": item, "choice": choice, "reason": REASON}

    assert rejected(cast.surgeon, cast.surgeon.pen.set_up(line[2], overrides=[override]))[0] == code


def test_any_other_choice_enters_with_its_reason_and_not_without(cast, line):
    pen = cast.surgeon.pen
    override = {"item": "magnification", "choice": "microscope", "reason": REASON}
    cast.surgeon.accepted(pen.set_up(line[2], overrides=[override]))

    short = pen.set_up(line[2], overrides=[override | {"reason": "so"}])

    assert rejected(cast.surgeon, short) == ("too_short", "body.overrides.0.reason", False)


def test_it_is_judged_by_the_practice_that_it_names(cast):
    pen = cast.surgeon.pen
    who = pen.patient(born_on="2012-01-01")
    measured = pen.examination(who)
    plan = pen.plan(who, measured)
    practice = pen.practice(figures=[{"name": "child_under_years", "value": 12}])
    cast.surgeon.accepted(who, measured, plan, practice)
    drops = {"item": "anaesthesia", "choice": "drops", "reason": REASON}

    assert rejected(cast.surgeon, pen.set_up(plan, overrides=[drops]))[0] == "drops_in_a_child"
    cast.surgeon.accepted(pen.set_up(plan, overrides=[drops], practice_id=practice["id"]))


def test_the_plan_must_be_known_and_unaltered(cast, line):
    pen, plan = cast.surgeon.pen, line[2]

    assert rejected(cast.surgeon, pen.set_up(plan, plan_digest="0" * 64))[0] == "plan_digest_differs"
    assert rejected(cast.surgeon, pen.set_up(plan, plan_id=uuid7())) == ("reference_unknown", "body.plan_id", True)
    assert rejected(cast.surgeon, pen.set_up(plan, practice_id=line[0]["id"]))[0] == "reference_kind"


@pytest.mark.parametrize("who", ["orthoptist", "theatre_nurse", "coordinator"])
def test_a_surgeon_alone_decides_it(cast, line, who):
    person = getattr(cast, who)

    assert rejected(person, person.pen.set_up(line[2]))[0] == "role_may_not"
