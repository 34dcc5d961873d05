"""A signature is made only for a plan without a stop, drawn again rightly, with every caution acknowledged."""

from dataclasses import replace

import pytest

from planner.anatomy import Eye
from planner.checkword import check_word
from planner.codec import read_body, write
from planner.errors import Refused
from planner.signing import sign
from planner.values.statement import Level
from tests.planner.signing.pieces import LEFT_MR, RIGHT_LR, RIGHT_MR, attestation, drawing, notice, option, plan

CAUTIONED = plan(
    option(
        RIGHT_MR,
        LEFT_MR,
        notices=(notice("steep", Level.CAUTION), notice("old", Level.CAUTION), notice("n", Level.NOTE)),
    )
)


def codes_of_refusal(a_plan, an_attestation):
    with pytest.raises(Refused) as refused:
        sign(a_plan, an_attestation)
    return [fault.code for fault in refused.value.faults]


def test_a_right_drawing_and_all_cautions_make_a_signature_with_the_check_word_of_the_plan():
    given = attestation(CAUTIONED)
    signature = sign(CAUTIONED, given)

    assert signature.plan_digest == given.plan_digest
    assert signature.check_word == check_word(given.plan_digest)
    assert signature.drawn == given.drawn
    assert signature.acknowledged == ("steep", "old")


def test_the_signature_is_a_valid_record_body():
    signature = sign(CAUTIONED, attestation(CAUTIONED))

    assert read_body("signature", write(signature)) == signature


def test_the_wrong_side_is_refused_in_words():
    one_eye = plan(option(RIGHT_MR, RIGHT_LR))
    wrong = tuple(replace(each, eye=Eye.LEFT) for each in drawing(RIGHT_MR, RIGHT_LR))
    with pytest.raises(Refused) as refused:
        sign(one_eye, attestation(one_eye, drawn=wrong))

    assert {fault.code for fault in refused.value.faults} == {"drawing_differs"}
    assert "The plan has this, the drawing has not: recess the right medial rectus." in str(refused.value)
    assert "The drawing has this, the plan has not: recess the left medial rectus." in str(refused.value)


def test_an_empty_drawing_is_refused():
    assert codes_of_refusal(CAUTIONED, attestation(CAUTIONED, drawn=())) == ["drawing_differs"] * 2


def test_a_caution_passed_over_is_refused_by_its_code():
    with pytest.raises(Refused) as refused:
        sign(CAUTIONED, attestation(CAUTIONED, acknowledged=("old",)))

    assert [(fault.code, fault.allowed) for fault in refused.value.faults] == [("caution_not_acknowledged", "steep")]


def test_a_note_needs_no_acknowledgement_and_takes_none():
    assert codes_of_refusal(CAUTIONED, attestation(CAUTIONED, acknowledged=("steep", "old", "n"))) == [
        "caution_not_in_plan"
    ]


def test_a_stop_is_refused_whatever_else_is_right_and_stands_first():
    stopped = plan(option(RIGHT_MR, notices=(notice("c", Level.CAUTION), notice("never", Level.STOP))))

    assert codes_of_refusal(stopped, attestation(stopped, drawn=())) == ["plan_has_stop", "drawing_differs"]


def test_a_plan_without_muscles_is_refused_even_with_an_equal_drawing():
    empty = plan(option())

    assert codes_of_refusal(empty, attestation(empty)) == ["nothing_to_operate"]
