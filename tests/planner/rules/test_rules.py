"""Each safety rule speaks exactly where its limit lies."""

import pytest

from planner.anatomy import Eye, Muscle
from planner.maxima import MAXIMA
from planner.records.examination import Acuity
from planner.values.option import Operation
from tests.planner.patients import before, change, codes, options, reading

BOTH_MR = "recess-both-mr"
ONE_EYE = "recess-mr-resect-lr-right"


def notices(option):
    return {notice.code: notice for notice in option.notices}


def set_by_hand(option_id, doses, angle=40, **rest):
    changes = [change(option_id, eye, muscle, mm) for (eye, muscle), mm in doses.items()]
    return options(angle, changes=changes, **rest)[option_id]


@pytest.mark.parametrize(
    ("option", "angle", "muscle", "mm", "expected"),
    [
        # conventional maxima of the reference, section 7, from memory: usual (widest), mm
        (ONE_EYE, 40, "MR", 6.0, None),
        (ONE_EYE, 40, "MR", 6.5, "above_usual_maximum-right-mr"),
        (ONE_EYE, 40, "MR", 7.0, "above_usual_maximum-right-mr"),
        (ONE_EYE, 40, "MR", 7.25, "above_widest_maximum-right-mr"),
        (ONE_EYE, 40, "LR", 9.0, None),
        (ONE_EYE, 40, "LR", 10.0, "above_usual_maximum-right-lr"),
        (ONE_EYE, 40, "LR", 10.5, "above_widest_maximum-right-lr"),
        ("recess-lr-resect-mr-right", -40, "LR", 9.0, None),
        ("recess-lr-resect-mr-right", -40, "LR", 9.5, "above_usual_maximum-right-lr"),
        ("recess-lr-resect-mr-right", -40, "LR", 10.5, "above_widest_maximum-right-lr"),
        ("recess-lr-resect-mr-right", -40, "MR", 8.0, None),
        ("recess-lr-resect-mr-right", -40, "MR", 8.5, "above_widest_maximum-right-mr"),
        # useful minima, from memory
        (ONE_EYE, 40, "MR", 2.5, None),
        (ONE_EYE, 40, "MR", 2.25, "below_useful_minimum-right-mr"),
        ("recess-lr-resect-mr-right", -40, "LR", 4.0, None),
        ("recess-lr-resect-mr-right", -40, "LR", 3.5, "below_useful_minimum-right-lr"),
    ],
)
def test_the_most_and_the_least_of_each_muscle(option, angle, muscle, mm, expected):
    offered = set_by_hand(option, {("right", muscle): mm}, angle)

    limits = [code for code in codes(offered.notices) if "maximum" in code or "minimum" in code]
    assert limits == ([expected] if expected else [])


def test_the_same_dose_in_both_eyes_is_said_once():
    offered = options(60)[BOTH_MR]

    assert "above_usual_maximum-both-mr" in codes(offered.notices)
    assert notices(offered)["above_usual_maximum-both-mr"].text.startswith("Both eyes: ")


def test_different_doses_are_said_for_each_eye():
    offered = set_by_hand(BOTH_MR, {("right", "MR"): 6.5, ("left", "MR"): 7.5})

    assert {"above_usual_maximum-right-mr", "above_widest_maximum-left-mr"} <= set(codes(offered.notices))


def test_two_recti_of_an_eye_are_routine():
    assert not any("recti" in code for code in codes(options(40)[ONE_EYE].notices))


def test_recti_operated_earlier_count_towards_the_caution():
    """Anterior segment ischaemia after three recti: 2 of 87 (Strabismus 2018)."""
    offered = options(40, previous_operations=(before("right", "SR"), before("left", "IR")))

    assert "recti_with_earlier-right" in codes(offered[ONE_EYE].notices)
    assert notices(offered[ONE_EYE])["recti_with_earlier-right"].level == "caution"
    assert not any("recti" in code for code in codes(offered[BOTH_MR].notices))


def test_the_same_rectus_again_cuts_no_further_vessels_and_obliques_cut_none():
    offered = options(40, previous_operations=(before("right", "MR"), before("right", "IO")))

    assert not any("recti" in code for code in codes(offered[ONE_EYE].notices))


@pytest.mark.parametrize("only", [Eye.RIGHT, Eye.LEFT])
def test_the_only_seeing_eye_is_refused_in_every_option_that_touches_it(only):
    sees = {only: Acuity.SIX_6, only.other: Acuity.HAND_MOVEMENTS}
    offered = options(40, acuity_right=sees[Eye.RIGHT], acuity_left=sees[Eye.LEFT])

    for option in offered.values():
        touches = any(dose.eye is only for dose in option.doses)
        assert ("only_seeing_eye" in codes(option.notices)) == touches
    assert notices(offered[BOTH_MR])["only_seeing_eye"].level == "stop"


def test_by_far_the_better_eye_is_a_caution():
    offered = options(40, acuity_right="6/60", acuity_left="6/9")

    assert notices(offered[BOTH_MR])["better_seeing_eye"].level == "caution"
    assert "better_seeing_eye" not in codes(offered[ONE_EYE].notices)


def test_a_muscle_operated_before_is_a_caution_with_its_history():
    offered = options(40, previous_operations=(before("right", "MR", "recess", 5.5, 2011),))[BOTH_MR]

    assert "recession 5.5 mm 2011" in notices(offered)["operated_muscle-right-mr"].text
    assert "operated_muscle-left-mr" not in codes(offered.notices)


@pytest.mark.parametrize(("mm", "speaks"), [(6.0, True), (None, True), (5.5, False)])
def test_a_lateral_resection_after_a_large_medial_recession_is_to_be_reduced(mm, speaks):
    """Wright: reduce a LR resection for a residual ET after a MR recession of 6.0 mm or more."""
    offered = options(20, previous_operations=(before("right", "MR", "recess", mm),))["resect-both-lr"]

    assert ("reduce_lateral_resection-right" in codes(offered.notices)) is speaks


@pytest.mark.parametrize(("angle", "speaks"), [(10, True), (10.1, False), (-8, True)])
def test_a_deviation_that_counts_as_success_is_a_caution(angle, speaks):
    muscle = "mr" if angle > 0 else "lr"
    offered = options(angle)[f"recess-{muscle}-left"]

    assert ("already_within_success" in codes(offered.notices)) is speaks


def test_what_a_changed_dose_leaves_is_weighed():
    """Wright, MR 3.0 is the row of 15: both eyes at 3.0 leave 25 of 40; both at 7.0, the row of 70, overdo 15 of 55."""
    left = set_by_hand(BOTH_MR, {("right", "MR"): 3.0, ("left", "MR"): 3.0})
    overdone = set_by_hand(BOTH_MR, {("right", "MR"): 7.0, ("left", "MR"): 7.0}, angle=55)

    assert (left.expected_residual_pd, overdone.expected_residual_pd) == (25, -15)
    assert "large_residual" in codes(left.notices)
    assert "large_overcorrection" in codes(overdone.notices)


def test_doses_outside_the_column_say_what_their_effect_rests_on():
    offered = set_by_hand(BOTH_MR, {("right", "MR"): 1.5, ("left", "MR"): 7.5})

    assert {"effect_below_first_row", "effect_above_last_row"} <= set(codes(offered.notices))
    assert offered.expected_correction_pd == 38.8  # 3.75 for half of the first row's dose, 35 for the last row


@pytest.mark.parametrize(
    ("vertical", "level"), [(0, None), (-3, "note"), (5.9, "note"), (6, "caution"), (-14, "caution")]
)
def test_a_vertical_deviation_is_not_answered(vertical, level):
    """2 mm, the least useful vertical surgery, at 3 Δ/mm make 6 Δ."""
    found = notices(options(40, vertical_pd=vertical)[BOTH_MR]).get("vertical_not_answered")

    assert (found.level if found else None) == level


def test_a_vertical_deviation_in_side_gaze_or_tilt_is_not_answered_either():
    found = notices(options(40, reading(40, 12, gaze="tilt_right"))[BOTH_MR])

    assert "with the head tilted right" in found["vertical_elsewhere_not_answered"].text


def test_a_pattern_and_an_incomitance_are_not_answered():
    found = notices(options(40, reading(30, gaze="up"), reading(46, gaze="down"), reading(20, gaze="left"))[BOTH_MR])

    assert found["pattern_not_answered"].facts == {"shape": "V", "size_pd": 16}
    assert found["incomitance_not_answered"].level == "caution"


@pytest.mark.parametrize(
    ("near", "code"),
    [
        (49, None),
        (50, "near_different"),
        (60, "near_different"),
        (61, "near_very_different"),
        (15, "near_very_different"),
    ],
)
def test_a_near_deviation_of_its_own_is_said(near, code):
    found = [each for each in codes(options(40, reading(near, at="near"))[BOTH_MR].notices) if "near" in each]

    assert found == ([code] if code else [])


def test_a_table_from_memory_is_a_caution_on_every_option_with_a_dose():
    for option in options(40, table="classic-parks").values():
        assert "table_from_memory" in codes(option.notices)
    assert "table_from_memory" not in codes(options(40)[BOTH_MR].notices)


def test_an_esodeviation_measured_without_correction_is_a_note():
    for option in options(40, correction="without").values():
        assert "measured_without_correction" in codes(option.notices)
    for option in options(-40, correction="without").values():
        assert "measured_without_correction" not in codes(option.notices)


def test_stops_stand_before_cautions_and_cautions_before_notes():
    offered = set_by_hand(
        BOTH_MR, {("right", "MR"): 7.5}, vertical_pd=3.0, acuity_right="6/6", acuity_left="no light perception"
    )
    levels = [notice.level.value for notice in offered.notices]

    assert levels == sorted(levels, key=("stop", "caution", "note").index)
    assert {"stop", "caution", "note"} == set(levels)


def test_every_horizontal_move_has_a_maximum():
    recti = [muscle for muscle in Muscle if muscle.is_rectus]
    assert set(MAXIMA) == {
        (muscle, operation) for muscle in recti for operation in (Operation.RECESS, Operation.RESECT)
    }
