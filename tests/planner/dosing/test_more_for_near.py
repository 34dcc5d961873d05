"""A larger esodeviation at near adds to the medial recessions, visibly, and the table's figure stays.

PMC6825697 (RCT, n = 100): 1.0 mm more from 10 to 20 Δ, 1.5 mm more above 20 Δ.
"""

import pytest

from tests.planner.patients import change, codes, options, reading


def near(angle, excess, **rest):
    return options(angle, reading(angle + excess, at="near"), **rest)


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("excess", "more"), [(-15, 0), (0, 0), (9.9, 0), (10, 1.0), (15, 1.0), (20, 1.0), (20.1, 1.5), (30, 1.5)]
)
@pytest.mark.parametrize("option", ["recess-both-mr", "recess-mr-resect-lr-right", "recess-mr-resect-lr-left"])
def test_the_addition_goes_by_the_excess_at_near_and_onto_the_medial_recti_alone(option, excess, more):
    """Wright, ET 30: MR 4.5, LR 5.5 in one eye."""
    for dose in near(30, excess)[option].doses:
        expected = more if dose.muscle == "MR" else 0
        assert (dose.adjustment_mm, dose.mm - dose.table_mm, dose.changed) == (expected, expected, False)
        assert dose.table_mm == (4.5 if dose.muscle == "MR" else 5.5)


def test_the_steps_show_the_tables_figure_the_addition_and_the_sum():
    dose = near(30, 15)["recess-both-mr"].doses[0]
    steps = {step.code: step for step in dose.steps}

    assert codes(dose.steps) == ["reading", "share", "row", "near_excess", "adjusted", "limbus", "caliper"]
    assert steps["near_excess"].provenance.mark == "published"
    assert steps["near_excess"].facts == {"near_excess_pd": 15, "more_mm": 1.0}
    assert steps["adjusted"].facts == {"table_mm": 4.5, "added_mm": 1.0, "mm": 5.5}
    assert dose.limbus_mm == 5.5 + 5.5


@pytest.mark.parametrize(
    ("angle", "excess", "mm"),
    [
        (50, 15, 7.0),  # 6.0 and 1.0: just the widest
        (50, 25, 7.0),  # 6.0 and 1.5: held at the widest
        (60, 25, 7.0),  # 6.5 and 1.5
        (70, 25, 7.0),  # 7.0 by the table: no room
    ],
)
def test_the_addition_never_goes_beyond_the_widest_maximum_of_7_mm(angle, excess, mm):
    offered = near(angle, excess)["recess-both-mr"]

    assert {dose.mm for dose in offered.doses} == {mm}
    assert not [notice for notice in offered.notices if notice.level == "stop"]
    wanted = 1.5 if excess > 20 else 1.0
    held = "held_at_maximum" in codes(offered.doses[0].steps)
    assert held == (offered.doses[0].adjustment_mm < wanted)


def test_the_expected_result_for_distance_leaves_the_addition_out():
    plain, more = options(40)["recess-both-mr"], near(40, 15)["recess-both-mr"]

    assert more.expected_correction_pd == plain.expected_correction_pd == 40
    assert "leaves out" in next(notice.text for notice in more.notices if notice.code == "near_different")


@pytest.mark.parametrize(
    ("set_mm", "correction"),
    [
        (4.0, 25.0),  # below the table's 4.5: the row of 25
        (4.5, 30.0),  # the addition refused
        (5.0, 30.0),  # a part of the addition
        (5.5, 30.0),  # as advised: no change
        (6.0, 35.0),  # half a millimetre beyond: the row of 5.0 mm
    ],
)
def test_a_change_is_counted_without_the_addition_and_never_falls(set_mm, correction):
    changes = [change("recess-both-mr", eye, "MR", set_mm) for eye in ("right", "left")]
    offered = near(30, 15, changes=changes)["recess-both-mr"]

    assert {dose.mm for dose in offered.doses} == {set_mm}
    assert {dose.changed for dose in offered.doses} == {set_mm != 5.5}
    assert {dose.table_mm for dose in offered.doses} == {4.5}
    assert offered.expected_correction_pd == correction


@pytest.mark.parametrize(
    ("angle", "excess", "option"),
    [
        (60, 15, "recess-both-mr-resect-lr-left"),
        (90, 15, "recess-both-mr-resect-both-lr"),
        (20, 15, "recess-mr-left"),
        (20, 15, "recess-mr-graded-left"),
        (-30, -15, "recess-both-lr"),
        (-30, -15, "resect-both-mr"),
    ],
)
def test_nothing_is_added_where_the_trial_says_nothing(angle, excess, option):
    """It recessed two muscles for the distance angle; the reference takes its figures for esotropia."""
    assert {dose.adjustment_mm for dose in near(angle, excess)[option].doses} == {0}


def test_nothing_is_added_where_near_itself_is_the_aim():
    offered = options(30, reading(45, at="near"), aim="near")["recess-both-mr"]

    assert {dose.adjustment_mm for dose in offered.doses} == {0}


def test_an_esodeviation_larger_at_near_is_answered_first_by_the_medial_recti():
    offered = near(40, 15)

    assert next(iter(offered)) == "recess-both-mr"
    levels = {notice.code: notice.level for notice in offered["resect-both-lr"].notices}
    assert levels["near_different"] == "caution"


def test_posterior_fixation_is_a_note_beside_a_medial_recession():
    offered = near(40, 15)

    assert "posterior_fixation" in codes(offered["recess-both-mr"].notices)
    assert "posterior_fixation" not in codes(offered["resect-both-lr"].notices)
