"""Where a muscle is attached afterwards, along the eye and by caliper, and what remains for later."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.globe import chord_mm
from tests.planner.patients import before, codes, options


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("arc", "diameter", "chord"),
    [
        (10.5, 24, 10.17),  # the reference's worked example, R = 12
        (11.0, 24, 10.62),
        (5.5, 24, 5.45),
        (14.4, 22, 13.39),
        (0, 24, 0),
    ],
)
def test_a_caliper_spans_the_chord(arc, diameter, chord):
    assert chord_mm(arc, diameter) == chord


@given(arc=st.floats(0.1, 20), diameter=st.floats(15, 40))
def test_the_chord_is_the_distance_of_two_points_on_the_globe(arc, diameter):
    """Outside oracle: the points themselves."""
    radius, angle = diameter / 2, arc / (diameter / 2)
    there = (radius * math.cos(angle), radius * math.sin(angle))

    assert chord_mm(arc, diameter) == pytest.approx(math.dist((radius, 0), there), abs=0.0051)


def test_the_caliper_is_for_this_eye_where_its_length_is_known_and_says_where_it_is_assumed():
    offered = options(40, axial_length_right_mm=21.0)["recess-both-mr"]
    right, left = offered.doses

    assert (right.caliper_mm, left.caliper_mm) == (chord_mm(11.0, 21), chord_mm(11.0, 24)) == (10.5, 10.62)
    assert right.steps[-1].text.endswith("globe of 21 mm.")
    assert left.steps[-1].text.endswith("globe of 24 mm, assumed.")


def test_a_resection_needs_no_caliper():
    assert {dose.caliper_mm for dose in options(40)["resect-both-lr"].doses} == {None}


def dose_after(previous, option="recess-mr-resect-lr-right", muscle="MR"):
    offered = options(20, previous_operations=previous)[option]
    return next(dose for dose in offered.doses if dose.muscle == muscle)


@pytest.mark.parametrize(
    ("previous", "attached", "after"),
    [
        # MR insertion 5.5 mm (Fuchs); Wright, ET 20: MR 3.5 mm
        ((), 5.5, 9.0),
        ((before("left", "MR", "recess", 3),), 5.5, 9.0),
        ((before("right", "MR", "recess", 3),), 8.5, 12.0),
        ((before("right", "MR", "recess", 2), before("right", "MR", "recess", 1.5)), 9.0, 12.5),
        ((before("right", "MR", "resect", 5),), 5.5, 9.0),
        ((before("right", "MR", "recess"),), None, None),
        ((before("right", "MR", "other"),), None, None),
        ((before("right", "MR", "unknown", 4),), None, None),
        ((before("right", "MR", "recess", 3), before("right", "MR", "resect", 3)), None, None),
    ],
)
def test_a_muscle_moved_before_is_measured_from_where_it_is(previous, attached, after):
    dose = dose_after(previous)

    assert (dose.insertion_mm, dose.limbus_mm) == (attached, after)
    assert (dose.attachment_words == "") == (attached is not None)
    assert (dose.caliper_mm is None) == (attached is None)
    assert codes(dose.steps)[-1] == ("limbus" if attached is None else "caliper")


def test_a_muscle_whose_place_is_not_known_is_put_behind_its_present_attachment_in_words():
    assert dose_after((before("right", "MR", "recess"),)).attachment_words == "3.5 mm behind its present attachment"
    resected = dose_after((before("right", "LR", "other"),), muscle="LR")
    assert resected.attachment_words == "at its present attachment"


@pytest.mark.parametrize(
    ("previous", "room"),
    [
        # widest MR recession 7 mm (from memory, verify); Wright, ET 20: 3.5 mm
        ((), 3.5),
        ((before("right", "MR", "recess", 2),), 1.5),
        ((before("right", "MR", "recess", 6),), 0),
        ((before("right", "MR", "resect", 6),), 3.5),
        ((before("right", "MR", "recess"),), None),
        ((before("right", "MR", "unknown", 2),), None),
    ],
)
def test_what_remains_for_a_later_operation_is_counted_against_the_widest_maximum(previous, room):
    assert dose_after(previous).room_mm == room


def test_a_recession_can_be_adjustable():
    assert [dose.adjustable for dose in options(40)["recess-mr-resect-lr-left"].doses] == [True, False]
