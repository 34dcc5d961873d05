"""What an earlier operation spared is not overspent, and what a residual deviation is answered by is told."""

import pytest

from tests.planner.patients import before, change, codes, options

RIGHT = "recess-mr-resect-lr-right"


def found(option, code):
    return next((notice for notice in option.notices if notice.code == code), None)


@pytest.mark.parametrize(
    ("mm", "level"),
    [(1.0, None), (3.5, None), (3.6, "stop"), (6.0, "stop"), (None, "caution")],
)
def test_a_second_recession_goes_no_further_than_the_widest_maximum(mm, level):
    """Wright, ET 20: MR 3.5 mm; widest 7 mm, so 3.5 may have been done before."""
    offered = options(20, previous_operations=(before("right", "MR", "recess", mm),))[RIGHT]
    notices = [notice for notice in offered.notices if notice.code.startswith("reserve")]

    assert [notice.level.value for notice in notices] == ([level] if level else [])


def test_the_stop_says_what_was_done_what_remains_and_what_is_asked():
    offered = options(20, previous_operations=(before("right", "MR", "recess", 6),))[RIGHT]
    notice = found(offered, "reserve_exceeded-right-mr")

    assert notice.facts == {"eye": "right", "muscle": "MR", "spent_mm": 6, "room_mm": 1, "limit_mm": 7}


def test_a_second_resection_is_held_to_its_own_maximum():
    """LR resection, widest 10 mm; Wright, ET 40: 6.5 mm."""
    twice = options(40, previous_operations=(before("right", "LR", "resect", 4),))[RIGHT]
    once = options(40, previous_operations=(before("right", "LR", "resect", 3.5),))[RIGHT]

    assert found(twice, "reserve_exceeded-right-lr").level == "stop"
    assert found(once, "reserve_exceeded-right-lr") is None


def test_the_opposite_operation_spends_nothing():
    offered = options(40, previous_operations=(before("right", "MR", "resect", 6), before("right", "LR", "recess", 8)))

    assert not [code for code in codes(offered[RIGHT].notices) if code.startswith("reserve")]


def test_the_surgeon_can_go_as_far_as_what_remains():
    previous = (before("right", "MR", "recess", 5),)
    offered = options(20, previous_operations=previous, changes=[change(RIGHT, "right", "MR", 2)])[RIGHT]

    assert found(offered, "reserve_exceeded-right-mr") is None
    assert offered.doses[0].room_mm == 0


def test_a_muscle_operated_before_is_spoken_against_with_the_untouched_ones_named():
    offered = options(20, previous_operations=(before("right", "MR", "recess", 3),))["recess-both-mr"]
    (reason,) = [reason for reason in offered.reasons_against if reason.code == "operated_before"]

    assert reason.text.endswith("untouched: the left medial rectus, both lateral recti.")


@pytest.mark.parametrize(("angle", "one", "both"), [(15, True, False), (16, False, True), (25, False, True)])
def test_one_lateral_rectus_up_to_15_and_both_above(angle, one, both):
    """Case series of 38 children summarised by the American Academy of Ophthalmology."""
    previous = (before("right", "MR", "recess", 6), before("left", "MR", "recess", 6))
    offered = options(angle, previous_operations=previous)
    for option, spoken_for in (("resect-lr-left", one), ("resect-both-lr", both)):
        said = offered[option]
        assert ("residual_by_size" in codes(said.reasons_for)) is spoken_for
        assert ("residual_by_size" in codes(said.reasons_against)) is not spoken_for
        assert "residual_series" in codes(said.notices)


def test_the_figures_for_a_residual_deviation_are_offered_only_after_a_medial_recession():
    assert "residual_series" not in codes(options(25)["resect-both-lr"].notices)


def test_no_reduction_of_a_lateral_resection_is_made_up():
    """Wright gives the direction and no figure: the dose stays the table's, with a caution to reduce it."""
    previous = (before("right", "MR", "recess", 6), before("left", "MR", "recess", 6))
    plain, after = options(30)["resect-both-lr"], options(30, previous_operations=previous)["resect-both-lr"]

    assert [dose.mm for dose in after.doses] == [dose.mm for dose in plain.doses]
    assert found(after, "reduce_lateral_resection-right").level == "caution"
