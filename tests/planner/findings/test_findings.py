"""Findings are sentences with figures, judged against thresholds that are published or marked."""

import pytest

from planner.anatomy import Eye
from planner.findings import find, target
from planner.findings.pattern import Shape
from planner.measurement import measure
from planner.values.statement import Strength
from tests.planner.patients import case, codes, reading


def found(horizontal_pd, *others, **rest):
    measurements = measure(case(horizontal_pd, *others, **rest).examination)
    return find(measurements, target(measurements))


def texts(findings):
    return [statement.text for statement in findings.statements]


def test_size_and_direction_are_said_in_words():
    assert texts(found(40, vertical_pd=-6))[:2] == [
        "Esodeviation 40 Δ at distance with correction.",
        "Left hyper 6 Δ at distance with correction.",
    ]
    assert texts(found(-32.5))[0] == "Exodeviation 32.5 Δ at distance with correction."


def test_what_was_not_measured_is_said_too():
    missing = [each for each in found(40).statements if each.strength is Strength.CANNOT_TELL]

    assert codes(missing) == ["near_not_measured", "pattern_not_measured", "comitance_not_measured"]
    assert all(each.settle for each in missing)


@pytest.mark.parametrize(
    ("distance", "near", "excess"), [(40, 52, 12), (40, 31, -9), (-20, -35, 15), (-35, -20, -15), (-20, 4, -24)]
)
def test_near_is_compared_in_the_deviations_own_direction(distance, near, excess):
    assert found(distance, reading(near, at="near")).near.excess_pd == excess


def test_near_measured_with_another_correction_is_not_compared():
    findings = found(40, reading(52, at="near", correction="without"))

    assert findings.near.excess_pd is None
    assert "near_not_measured" in codes(findings.statements)


@pytest.mark.parametrize(
    ("up", "down", "shape"),
    [
        (30, 45, Shape.V),
        (30, 44.9, Shape.NONE),
        (45, 35, Shape.A),
        (45, 35.1, Shape.NONE),
        (40, 40, Shape.NONE),
        (-45, -30, Shape.V),
        (-30, -40, Shape.A),
        (-5, 5.5, Shape.NONE),
    ],
)
def test_an_a_pattern_counts_from_10_and_a_v_pattern_from_15(up, down, shape):
    """PMC4330283: A from 10 Δ, V from 15 Δ. V: more eso (less exo) in down-gaze."""
    angle = 40 if up > 0 else -40

    assert found(angle, reading(up, gaze="up"), reading(down, gaze="down")).pattern.shape is shape


@pytest.mark.parametrize(
    ("ahead", "right", "comitant"),
    [
        (40, 28, False),
        (40, 28.5, True),
        (40, 52, False),
        (14, 20, False),
        (14, 19.9, True),
        (15, 9, False),
        (18, 24, True),
    ],
)
def test_side_gaze_differs_from_12_on_above_20_and_from_6_on_up_to_20(ahead, right, comitant):
    """Holmes 2009: a real change is 12 Δ or more above 20 Δ, 6 Δ or more for 10 to 20 Δ; the wider band counts."""
    findings = found(ahead, reading(right, gaze="right"))

    assert findings.comitance.comitant is comitant


def test_the_side_that_differs_is_named():
    findings = found(40, reading(20, gaze="left"), reading(41, gaze="right"))

    assert findings.comitance.statement.text.startswith("Incomitant: 20 Δ less eso (more exo) in left gaze")


@pytest.mark.parametrize(
    ("right", "left", "poorer", "leading", "only"),
    [
        ("6/6", "6/9", None, None, None),
        ("6/6", "6/12", Eye.LEFT, None, None),
        ("6/48", "6/6", Eye.RIGHT, None, None),
        ("6/60", "6/6", Eye.RIGHT, Eye.LEFT, None),
        ("6/6", "3/60", Eye.LEFT, Eye.RIGHT, None),
        ("6/6", "counting fingers", Eye.LEFT, Eye.RIGHT, Eye.RIGHT),
        ("no light perception", "3/60", Eye.RIGHT, Eye.LEFT, Eye.LEFT),
        ("hand movements", "counting fingers", Eye.RIGHT, Eye.LEFT, None),
        ("6/6", None, None, None, None),
    ],
)
def test_the_poorer_and_the_only_seeing_eye_are_known(right, left, poorer, leading, only):
    """Two lines count as a difference (common practice); severe from 6/60, blind beyond 3/60 (WHO, from memory)."""
    vision = found(40, acuity_right=right, acuity_left=left).vision

    assert (vision.poorer, vision.leading, vision.only) == (poorer, leading, only)
