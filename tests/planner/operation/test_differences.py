"""Whatever differs from the plan is said in words, asks for a reason, and a stop is shown as one."""

import pytest

from tests.planner.examined import straight
from tests.planner.operation.theatre import (
    ESO_40,
    done,
    drafted,
    hindrance_codes,
    notice_levels,
    reviewed,
    signed,
    with_muscle,
)

CHANGES = {
    "other_mm": (("right", "MR"), done("recess", 5.0)),
    "other_operation": (("right", "MR"), done("resect", 5.0)),
    "other_tendon": (("right", "MR"), done("recess", 5.5, "up")),
    "left_out": (("left", "MR"), None),
    "added": (("left", "LR"), done("resect", 4.0)),
}


def right(muscle="MR", **fields):
    return with_muscle(drafted(ESO_40), "right", muscle, **fields)


def left(muscle="MR", **fields):
    return with_muscle(drafted(ESO_40), "left", muscle, **fields)


def changed(code, reason=""):
    (eye, muscle), work = CHANGES[code]
    return with_muscle(drafted(ESO_40), eye, muscle, done=work, reason=reason)


@pytest.mark.parametrize("code", CHANGES)
class TestADifference:
    def test_is_named_and_written_out_with_its_side(self, code):
        (eye, _), _ = CHANGES[code]
        (found,) = [each for each in reviewed(ESO_40, changed(code)).differences if each.needs_reason]

        assert found.code == code
        assert found.text.startswith(f"{eye.capitalize()} eye, ")

    def test_is_not_saved_without_a_reason(self, code):
        record = changed(code)
        place = next(n for n, each in enumerate(record["muscles"]) if (each["eye"], each["muscle"]) == CHANGES[code][0])

        assert hindrance_codes(ESO_40, record)["reason_missing"] == f"muscles.{place}.reason"

    def test_is_saved_with_one(self, code):
        assert hindrance_codes(ESO_40, changed(code, "tight on forced duction")) == {}


def test_both_figures_stand_in_the_sentence():
    (text,) = [each.text for each in reviewed(ESO_40, changed("other_mm")).differences if each.needs_reason]

    assert text == "Right eye, medial rectus: recession of 5 mm; planned was a recession of 5.5 mm."


@pytest.mark.parametrize(
    ("record", "code", "level"),
    [
        (right(done=done("recess", 6.5)), "above_usual_maximum-right-mr", "caution"),
        (right(done=done("recess", 7.0)), "above_usual_maximum-right-mr", "caution"),
        (right(done=done("recess", 7.5)), "above_widest_maximum-right-mr", "stop"),
        (right(done=done("resect", 5.0)), "opposite_operation-right-mr", "stop"),
        (left(done=None), "left_out-left-mr", "caution"),
        (left("LR", done=done("resect", 4.0)), "muscle_not_planned-left-lr", "caution"),
        (left(state="slipped"), "muscle_slipped-left-mr", "caution"),
        (left(state="missing"), "muscle_missing-left-mr", "caution"),
        (left(duction_after="restricted"), "still_restricted-left-mr", "caution"),
        (left(insertion_mm=6.2), "unusual_insertion-left-mr", "caution"),
        (left(insertion_mm=4.0), "unusual_insertion-left-mr", "caution"),
        (left(insertion_mm=5.5, limbus_mm=9.5), "distance_misfits-left-mr", "caution"),
        (drafted(ESO_40, operated_on="2026-11-20"), "operated_before_signed", "caution"),
    ],
)  # fmt: skip
def test_what_must_be_said_is_said_at_its_level(record, code, level):
    assert notice_levels(ESO_40, record) == {code: level}


@pytest.mark.check_value
@pytest.mark.parametrize("insertion_mm", [4.1, 5.2, 6.1])
def test_an_insertion_within_what_oct_measured_is_not_remarked(insertion_mm):
    """187 eyes: medial rectus 4.1 to 6.1 mm (PMID 27166792)."""
    assert notice_levels(ESO_40, left(insertion_mm=insertion_mm)) == {}


def test_an_eye_that_the_plan_does_not_operate_is_a_stop_that_asks_for_a_reason():
    one_eye = signed("recess-mr-resect-lr-right", straight(40))
    record = with_muscle(drafted(one_eye), "left", "MR", done=done("recess", 5.5))

    assert notice_levels(one_eye, record) == {"other_eye-left-mr": "stop"}
    assert "reason_missing" in hindrance_codes(one_eye, record)


def test_what_earlier_operations_took_counts_against_the_widest_maximum():
    """The widest maximum of a lateral recession is 10 mm (from memory, verify); 4 were done before."""
    before = [{"eye": "right", "muscle": "LR", "operation": "recess", "mm": 4}]
    plan = signed("recess-mr-resect-lr-left", straight(20), previous_operations=before)
    added = {"reason": "slipped forward", "done": done("recess", 6.5)}
    record = with_muscle(drafted(plan), "right", "LR", **added)

    assert notice_levels(plan, record)["above_widest_maximum-right-lr"] == "stop"


def test_four_recti_of_one_eye_are_a_stop_and_three_a_caution():
    record = drafted(ESO_40)
    for muscle in ("LR", "SR"):
        record = with_muscle(record, "right", muscle, done=done("resect", 4.0), reason="as found")
    assert notice_levels(ESO_40, record)["three_recti-right"] == "caution"

    record = with_muscle(record, "right", "IR", done=done("recess", 4.0), reason="as found")
    assert notice_levels(ESO_40, record)["four_recti-right"] == "stop"
