"""Only a surgeon signs, under their own name, the very plan that stands."""

import copy

import pytest

from planner.canonical import digest
from planner.checkword import check_word
from tests.clinic.pen import uuid7


@pytest.fixture
def line(cast):
    """The whole line; all but the signature are in the ledger."""
    *earlier, signature = cast.surgeon.pen.line()
    cast.surgeon.accepted(*earlier)
    return (*earlier, signature)


def changed(record, **body):
    body = copy.deepcopy(record["body"]) | body
    return record | {"body": body, "digest": digest(body)}


def reason(person, record):
    (result,) = person.results(record)
    assert result["status"] == "rejected", result
    return result["code"], result["retryable"]


def test_the_surgeons_signature_enters(cast, line):
    assert cast.surgeon.results(line[3])[0]["status"] == "accepted"


def test_the_whole_line_enters_in_one_push(cast):
    cast.surgeon.accepted(*cast.surgeon.pen.line())


def test_an_orthoptist_cannot_sign(cast, line):
    assert reason(cast.orthoptist, cast.orthoptist.pen.signature(line[2])) == ("role_may_not", False)


def test_nobody_signs_in_another_name(cast, line):
    assert reason(cast.surgeon, changed(line[3], signer_name="Dr Viktor Hale")) == ("signer_differs", False)


def test_a_signature_waits_for_its_plan(cast, line):
    assert reason(cast.surgeon, changed(line[3], plan_id=uuid7())) == ("reference_unknown", True)


def test_a_signature_under_something_else_than_a_plan_is_refused(cast, line):
    assert reason(cast.surgeon, changed(line[3], plan_id=line[1]["id"])) == ("reference_kind", False)


def test_another_content_of_the_plan_is_not_what_was_signed(cast, line):
    assert reason(cast.surgeon, changed(line[3], plan_digest="0" * 64)) == ("plan_digest_differs", False)


def test_a_wrong_check_word_is_refused(cast, line):
    assert reason(cast.surgeon, changed(line[3], check_word="ABAB ABAB")) == ("signature_differs", False)


def test_a_drawing_of_the_other_side_is_refused(cast):
    pen = cast.surgeon.pen
    patient = pen.patient()
    examination = pen.examination(patient, acuity_right="6/6", acuity_left="6/60", fixing_eye="right")
    one_eye = next(
        plan
        for plan in (pen.plan(patient, examination, place=place) for place in range(5))
        if len({dose["eye"] for dose in plan["body"]["option"]["doses"]}) == 1
    )
    signature = pen.signature(one_eye)
    other = {"right": "left", "left": "right"}
    drawn = [muscle | {"eye": other[muscle["eye"]]} for muscle in signature["body"]["drawn"]]
    cast.surgeon.accepted(patient, examination, one_eye)

    assert reason(cast.surgeon, changed(signature, drawn=drawn)) == ("drawing_differs", False)


def test_a_drawing_that_lacks_a_muscle_is_refused(cast, line):
    assert reason(cast.surgeon, changed(line[3], drawn=line[3]["body"]["drawn"][:1])) == ("drawing_differs", False)


def test_a_plan_that_was_replaced_can_no_longer_be_signed(cast, line):
    patient, examination, plan, signature = line
    cast.surgeon.accepted(cast.surgeon.pen.plan(patient, examination, place=1, supersedes=plan))

    assert reason(cast.surgeon, signature) == ("plan_superseded", False)


def test_a_plan_that_is_replaced_in_the_same_push_can_no_longer_be_signed(cast, line):
    patient, examination, plan, signature = line
    replaced = cast.surgeon.pen.plan(patient, examination, place=1, supersedes=plan)

    statuses = [result["status"] for result in cast.surgeon.results(replaced, signature)]

    assert statuses == ["accepted", "rejected"]


def test_a_plan_that_was_taken_back_can_no_longer_be_signed(cast, line):
    cast.surgeon.accepted(cast.surgeon.pen.retraction(line[2]))

    assert reason(cast.surgeon, line[3]) == ("plan_superseded", False)


def test_what_was_signed_stays_signed_when_the_plan_is_replaced_later(cast, line):
    patient, examination, plan, signature = line
    cast.surgeon.accepted(signature)
    cast.surgeon.accepted(cast.surgeon.pen.plan(patient, examination, place=1, supersedes=plan))

    assert cast.surgeon.results(signature)[0]["status"] == "duplicate"


def test_the_plan_of_an_older_engine_can_still_be_signed(cast):
    pen = cast.surgeon.pen
    patient, examination, plan, signature = pen.line()
    older = changed(plan, engine_version="0.9.0")
    cast.surgeon.accepted(patient, examination, older)

    signed = changed(signature, plan_digest=older["digest"], check_word=check_word(older["digest"]))

    cast.surgeon.accepted(signed)
