"""Which operations are offered for which deviation."""

import pytest

from planner.errors import Refused
from tests.planner.patients import before, change, codes, doses, options, reading

ESO = {"recess-both-mr", "resect-both-lr", "recess-mr-resect-lr-right", "recess-mr-resect-lr-left"}
EXO = {"recess-both-lr", "resect-both-mr", "recess-lr-resect-mr-right", "recess-lr-resect-mr-left"}


@pytest.mark.parametrize(
    ("angle", "expected"),
    [
        (40, ESO),
        (-40, EXO),
        (35, ESO | {"recess-mr-right", "recess-mr-left", "recess-mr-graded-right", "recess-mr-graded-left"}),
        (35.1, ESO),
        (-25, EXO | {"recess-lr-right", "recess-lr-left", "recess-lr-graded-right", "recess-lr-graded-left"}),
        (-25.1, EXO),
        (50, ESO),
        (50.1, ESO | {"recess-both-mr-resect-lr-right", "recess-both-mr-resect-lr-left"}),
        (-55, EXO | {"recess-both-lr-resect-mr-right", "recess-both-lr-resect-mr-left"}),
        (80, ESO | {"recess-both-mr-resect-lr-right", "recess-both-mr-resect-lr-left"}),
        (
            81,
            ESO
            | {
                "recess-both-mr-resect-lr-right",
                "recess-both-mr-resect-lr-left",
                "recess-both-mr-resect-both-lr",
            },
        ),
    ],
)
def test_the_angle_decides_what_is_offered(angle, expected):
    """One muscle up to 35 Δ eso (PMID 20795601) and 25 Δ exo, three beyond 50, four beyond 80 Δ (from memory)."""
    assert set(options(angle)) == expected


def test_a_single_resection_is_offered_where_its_antagonist_was_recessed():
    offered = options(20, previous_operations=(before("left", "MR", "recess", 5),))

    assert "resect-lr-left" in offered
    assert "resect-lr-right" not in offered


def test_titles_name_the_eye_in_words():
    offered = options(60)

    assert offered["recess-mr-resect-lr-left"].title == "Left eye: recess the medial rectus, resect the lateral rectus"
    assert offered["recess-both-mr-resect-lr-right"].title == (
        "Recess both medial recti, resect the right lateral rectus"
    )


def test_a_change_keeps_the_tables_figure_and_recomputes_the_rest():
    """Wright, ET: 5.0 is the row of 35, so one eye at 5.0 and one at 5.5 answer 37.5 of 40."""
    offered = options(40, changes=[change("recess-both-mr", "right", "MR", 5.0)])["recess-both-mr"]
    right, left = offered.doses

    assert (right.mm, right.table_mm, right.changed, right.limbus_mm) == (5.0, 5.5, True, 10.5)
    assert (left.mm, left.table_mm, left.changed, left.limbus_mm) == (5.5, 5.5, False, 11.0)
    assert codes(right.steps)[-3:] == ["changed", "limbus", "caliper"]
    assert (offered.expected_correction_pd, offered.expected_residual_pd) == (37.5, 2.5)


def test_a_change_touches_no_other_option():
    changed = options(40, changes=[change("recess-both-mr", "right", "MR", 5.0)])
    plain = options(40)

    assert {id_: option for id_, option in changed.items() if id_ != "recess-both-mr"} == {
        id_: option for id_, option in plain.items() if id_ != "recess-both-mr"
    }


def test_a_change_to_the_tables_own_figure_is_no_change():
    offered = options(40, changes=[change("recess-both-mr", "right", "MR", 5.5)])

    assert offered == options(40)


@pytest.mark.parametrize(
    ("option", "eye", "muscle", "code", "field"),
    [
        ("recess-both-ir", "right", "MR", "unknown_option", "changes.0.option"),
        ("recess-both-lr", "right", "LR", "unknown_option", "changes.0.option"),
        ("recess-mr-resect-lr-left", "right", "MR", "unknown_muscle", "changes.0.muscle"),
        ("recess-both-mr", "right", "LR", "unknown_muscle", "changes.0.muscle"),
        ("resect-both-lr", "right", "LR", "option_without_doses", "changes.0.option"),
    ],
)
def test_a_change_of_what_is_not_there_is_refused(option, eye, muscle, code, field):
    with pytest.raises(Refused) as caught:
        options(65, changes=[change(option, eye, muscle, 5)])

    (fault,) = caught.value.faults
    assert (fault.code, fault.field) == (code, field)


def first(*arguments, **rest):
    return next(iter(options(*arguments, **rest)))


def test_without_more_to_go_by_recessions_of_both_eyes_come_first():
    assert first(40) == "recess-both-mr"
    assert first(-30) == "recess-both-lr"
    assert first(20) == "recess-both-mr"


@pytest.mark.parametrize(("right", "left", "eye"), [("6/6", "6/60", "left"), ("hand movements", "6/9", "right")])
def test_a_sensory_deviation_is_kept_to_the_poorly_seeing_eye(right, left, eye):
    assert first(40, acuity_right=right, acuity_left=left) == f"recess-mr-resect-lr-{eye}"


def test_an_exodeviation_larger_at_near_is_answered_by_the_medial_recti():
    offered = options(-25, reading(-40, at="near"))

    assert "acts_where_larger" in codes(offered["resect-both-mr"].reasons_for)
    assert "acts_where_smaller" in codes(offered["recess-both-lr"].reasons_against)


def test_the_fixing_eye_is_spared_if_one_eye_is_operated():
    offered = options(40, fixing_eye="left")
    order = list(offered)

    assert "fixing_eye_spared" in codes(offered["recess-mr-resect-lr-right"].reasons_for)
    assert order.index("recess-mr-resect-lr-right") < order.index("recess-mr-resect-lr-left")


def test_untouched_muscles_are_preferred_to_operated_ones():
    previous = (before("right", "MR", "recess", 5), before("left", "MR", "recess", 5))

    assert first(30, previous_operations=previous) == "resect-both-lr"


def test_options_that_stop_come_last():
    offered = list(options(90).values())
    stops = [any(notice.level == "stop" for notice in option.notices) for option in offered]

    assert stops == sorted(stops)
    assert doses(offered[-1]) == {}
