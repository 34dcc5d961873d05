"""The reading that the plan answers: why it counts, and what speaks against it."""

import pytest

from planner.errors import Refused
from tests.planner.examined import aimed, straight

READINGS = (
    straight(-30),
    straight(-20, at="near"),
    straight(-38, condition="after patching"),
    straight(-42, condition="prism adapted"),
)


@pytest.mark.parametrize(
    ("aim", "counts"), [("distance", -30), ("after patching", -38), ("prism adapted", -42), ("near", -20)]
)
def test_the_aim_chooses_the_reading_and_says_why(aim, counts):
    target = aimed(*READINGS, aim=aim)

    assert target.horizontal_pd == counts
    assert (target.steps[0].code, target.steps[0].facts["aim"]) == ("aim", aim)


@pytest.mark.parametrize("aim", ["after patching", "prism adapted", "near"])
def test_an_aim_that_was_not_measured_is_refused(aim):
    with pytest.raises(Refused) as caught:
        aimed(straight(-30), aim=aim)

    (fault,) = caught.value.faults
    assert (fault.code, fault.field, fault.value) == ("aim_not_measured", "aim", aim)


def test_the_distance_reading_is_needed_whatever_the_aim():
    with pytest.raises(Refused) as caught:
        aimed(straight(20, at="near"), aim="near")

    assert caught.value.faults[0].code == "no_primary_distance"


def codes(target):
    return [notice.code for notice in target.notices]


def test_near_as_the_aim_is_a_caution():
    assert codes(aimed(straight(-25), straight(-27, at="near"), aim="near")) == ["aim_is_near"]


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("distance", "patched", "differs"),
    [
        # limits of the difference of two distance readings, Holmes et al. 2009: 10.4 above 20 Δ, 5.8 to 20 Δ
        pytest.param(-30, -40.3, False, id="10.3-above-20"),
        pytest.param(-30, -40.4, True, id="10.4-above-20"),
        pytest.param(-12, -17.7, False, id="5.7-to-20"),
        pytest.param(-12, -17.8, True, id="5.8-to-20"),
    ],
)
def test_an_aim_that_differs_from_distance_beyond_error_is_a_caution(distance, patched, differs):
    target = aimed(straight(distance), straight(patched, condition="after patching"), aim="after patching")

    assert ("aim_differs_from_distance" in codes(target)) == differs


@pytest.mark.parametrize(
    "rest",
    [{"dvd_right_pd": 12}, {"excyclotorsion_left_deg": 8}, {"excyclotorsion_down_deg": 12}],
    ids=["dissociated", "torsion", "torsion-in-down-gaze"],
)
def test_straight_eyes_with_a_deviation_of_another_kind_are_answered(rest):
    target = aimed(straight(0), **rest)

    assert (target.horizontal_pd, target.vertical_pd) == (0, None)


def test_straight_eyes_with_a_deviation_elsewhere_are_answered():
    assert aimed(straight(0), straight(-20, at="near")).horizontal_pd == 0
