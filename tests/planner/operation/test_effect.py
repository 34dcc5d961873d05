"""The engine's view of what was done against what was planned."""

import pytest

from planner.codec import read
from planner.proposal import propose
from planner.records.case import Case
from tests.planner.examined import straight, taken
from tests.planner.operation.theatre import ESO_40, ONE_EYE_40, done, drafted, reviewed, signed, with_muscle


def effect(pieces, record):
    return reviewed(pieces, record).effect


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("right_mm", "left_mm", "residual_pd"),
    [(5.5, 5.5, 0.0), (5.0, 5.0, 5.0), (5.0, 5.5, 2.5), (4.5, 4.5, 10.0), (6.0, 6.0, -10.0), (3.0, 3.0, 25.0)],
)
def test_other_millimetres_leave_what_the_printed_rows_say(right_mm, left_mm, residual_pd):
    """Wright, after Parks: both medial recti 3.0, 4.5, 5.0, 5.5, 6.0 mm for 15, 30, 35, 40, 50 Δ; half a row each."""
    record = with_muscle(drafted(ESO_40), "right", "MR", done=done("recess", right_mm), reason="tight")
    record = with_muscle(record, "left", "MR", done=done("recess", left_mm), reason="tight")

    assert effect(ESO_40, record).done_residual_pd == residual_pd


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("pieces", "left_out", "residual_pd"),
    [(ESO_40, ("left", "MR"), 20.0), (ONE_EYE_40, ("right", "LR"), 20.0), (ONE_EYE_40, ("right", "MR"), 20.0)],
)
def test_a_muscle_left_out_leaves_its_half_of_the_row(pieces, left_out, residual_pd):
    """Each muscle of a row of 40 Δ answers half of it (common practice)."""
    found = effect(pieces, with_muscle(drafted(pieces), *left_out, done=None, reason="bradycardia"))

    assert found.planned_residual_pd == 0.0
    assert found.done_residual_pd == residual_pd
    assert found.done.mean_pd == residual_pd


@pytest.mark.check_value
def test_a_muscle_added_takes_its_half_of_its_row():
    """Wright, after Parks, one eye: lateral resection 4.0 mm at the row of 20 Δ, half of which is 10."""
    record = with_muscle(drafted(ESO_40), "right", "LR", done=done("resect", 4.0), reason="more was needed")

    assert effect(ESO_40, record).done_residual_pd == -10.0


def test_the_opposite_operation_counts_against_the_deviation():
    record = with_muscle(drafted(ESO_40), "right", "MR", done=done("resect", 5.5), reason="by mistake")

    assert effect(ESO_40, record).done_residual_pd > 20.0


def test_what_no_column_answers_gets_no_figure_and_says_so():
    record = with_muscle(drafted(ESO_40), "right", "MR", done=done("transpose"), reason="scarred")
    found = effect(ESO_40, record)

    assert found.done_residual_pd is None
    assert found.done is None
    assert "no_column" in {each.code for each in found.statements}


def combined(*readings):
    """Both medial recti and the first vertical addition that can be signed."""
    examination = {"schema": 1, "examined_on": "2026-11-02", "readings": list(readings)}
    offered = propose(read(Case, {"schema": 1, "examination": examination, "table": "wright-after-parks"})).additions
    vertical = next(
        option.id
        for option in offered
        if option.answers == "vertical" and option.doses and all(notice.level != "stop" for notice in option.notices)
    )
    return signed(f"recess-both-mr+{vertical}", *readings, combine=("recess-both-mr", vertical))


def test_a_combined_plan_is_answered_again_by_the_part_that_doses_the_muscle():
    pieces = combined(straight(40, 12), taken("up", 30), taken("down", 50))
    found = effect(pieces, with_muscle(drafted(pieces), "right", "MR", done=done("recess", 5.0), reason="tight"))

    assert found.done_residual_pd == 2.5
    assert [each.answers for each in found.expected] == [each["answers"] for each in pieces[0]["option"]["expected"]]


def test_a_muscle_added_to_a_combined_plan_leaves_the_other_deviations_untold():
    pieces = combined(straight(40, 12))
    found = effect(pieces, with_muscle(drafted(pieces), "left", "LR", done=done("resect", 4.0), reason="more needed"))

    assert found.expected == ()
    assert "others_untold" in {each.code for each in found.statements}
