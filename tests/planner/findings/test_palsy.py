"""The three-step test on whole examinations, what breaks it, and signs of a palsy on both sides.

The weak muscle's hyper, gaze and tilt follow from what the muscles do: an elevator's weakness leaves the other eye
higher; it is worst where the muscle moves the eye most, abduction for a rectus and adduction for an oblique; and on the
tilt in which it should counter-roll, towards its own shoulder if it intorts and away from it if it extorts.
"""

import pytest

from planner.anatomy import Eye, Muscle
from tests.planner.examined import found, said, straight, taken, the

ELEVATES = {"SR": True, "IO": True, "IR": False, "SO": False}
INTORTS = {"SR": True, "SO": True, "IR": False, "IO": False}
RECTI = {"SR", "IR"}
OTHER = {"right": "left", "left": "right"}

WHOLE = [pytest.param(eye, muscle, id=f"{eye}-{muscle}") for eye in OTHER for muscle in ELEVATES]


def signs_of(eye, muscle):
    """Higher eye, worse gaze, worse tilt, from anatomy alone."""
    higher = OTHER[eye] if ELEVATES[muscle] else eye
    gaze = eye if muscle in RECTI else OTHER[eye]
    tilt = eye if INTORTS[muscle] else OTHER[eye]
    return higher, gaze, tilt


AHEAD_PD, WORSE_PD, BETTER_PD = 12, 20, 4


def verticals(higher, gaze, tilt):
    """Readings of a hyper of one eye, worse in one gaze and on one tilt."""
    sign = 1 if higher == "right" else -1
    steps = [(side, side == gaze) for side in OTHER] + [(f"tilt_{side}", side == tilt) for side in OTHER]
    return [
        straight(0, sign * AHEAD_PD),
        *(taken(where, 0, sign * (WORSE_PD if worse else BETTER_PD)) for where, worse in steps),
    ]


@pytest.mark.check_value
@pytest.mark.parametrize(("eye", "muscle"), WHOLE)
def test_each_of_the_eight_muscles_is_found_from_what_it_does(eye, muscle):
    findings = found(*verticals(*signs_of(eye, muscle)))
    weak = findings.palsy.test.weak

    assert (weak.eye, weak.muscle) == (Eye(eye), Muscle(muscle))
    assert the(findings, "three_step").strength == "clear"


SMALL = "small vertical deviation that goes with a horizontal one"
ABSENT = [{"breaker": "skew deviation", "presence": "absent"}]
BROKEN = [
    # Kushner, Ophthalmology 1989;96:127-32
    pytest.param({"dvd_left_pd": 8}, "dissociated vertical deviation", id="drift-measured"),
    pytest.param(
        {"previous_operations": [{"eye": "left", "muscle": "IR", "operation": "recess"}]},
        "previous vertical muscle surgery",
        id="inferior-rectus-operated",
    ),
    pytest.param(
        {"forced_ductions": [{"eye": "left", "muscle": "SR", "result": "restricted"}]},
        "restriction or contracture of a vertical rectus",
        id="elevation-held-back",
    ),
    pytest.param({"diagnoses": [{"diagnosis": "myasthenia"}]}, "myasthenia", id="myasthenia"),
    pytest.param({"diagnoses": [{"diagnosis": "skew deviation"}]}, "skew deviation", id="skew"),
    pytest.param(
        {"diagnoses": [{"diagnosis": "skew deviation"}], "conditions": ABSENT},
        "skew deviation",
        id="shown-beats-ticked",
    ),
    pytest.param(
        {"diagnoses": [{"diagnosis": "third nerve palsy", "eye": "right"}]}, "palsy of more than one muscle", id="third"
    ),
    pytest.param(
        {"diagnoses": [{"diagnosis": "thyroid eye disease"}]},
        "restriction or contracture of a vertical rectus",
        id="thyroid",
    ),
    pytest.param(
        {"conditions": [{"breaker": SMALL, "presence": "present"}]},
        SMALL,
        id="ticked",
    ),
]


@pytest.mark.check_value
@pytest.mark.parametrize(("shown", "breaker"), BROKEN)
def test_the_test_is_not_valid_where_something_else_makes_a_hyper(shown, breaker):
    findings = found(*verticals("right", "left", "right"), **shown)

    assert findings.palsy.test.weak is None
    assert the(findings, "three_step").strength == "cannot tell"
    assert breaker in the(findings, "three_step").text
    assert said(findings, "three_step_not_valid")


@pytest.mark.parametrize(
    "harmless",
    [
        {"previous_operations": [{"eye": "left", "muscle": "MR", "operation": "recess"}]},
        {"forced_ductions": [{"eye": "left", "muscle": "SR", "result": "free"}]},
        {"diagnoses": [{"diagnosis": "fourth nerve palsy", "eye": "right"}]},
        {"dvd_left_pd": 0},
        {"conditions": ABSENT},
    ],
    ids=["horizontal-surgery", "free-by-hand", "the-palsy-itself", "no-drift", "skew-excluded"],
)
def test_what_does_not_break_the_test(harmless):
    assert found(*verticals("right", "left", "right"), **harmless).palsy.test.weak is not None


def test_what_was_not_excluded_is_asked_for():
    settle = the(found(*verticals("right", "left", "right"), conditions=ABSENT), "three_step").settle

    assert "myasthenia" in settle
    assert "skew deviation" not in settle


def test_steps_that_were_not_made_are_asked_for():
    finding = the(found(straight(0, 12)), "three_step")

    assert "right and in left gaze" in finding.settle
    assert "head tilted" in finding.settle


def test_a_hyper_within_chance_alone_asks_no_question():
    """Holmes 2009: 4.1 Δ are the 95 % limits; below 4.1 / 1.96 not even the side can be told."""
    assert not said(found(straight(30, 2)), "three_step")
    assert said(found(straight(30, 2.2)), "three_step")


SUSPECTED = [
    pytest.param({"diagnoses": [{"diagnosis": "fourth nerve palsy", "eye": "left"}]}, True, id="diagnosed"),
    pytest.param({"versions": [{"eye": "left", "muscle": "SO", "grade": -2}]}, True, id="superior-oblique-underacts"),
    pytest.param({"excyclotorsion_right_deg": 6, "excyclotorsion_left_deg": 5}, True, id="11-degrees"),
    pytest.param({"excyclotorsion_right_deg": 5, "excyclotorsion_left_deg": 5}, False, id="10-degrees"),
    pytest.param({"versions": [{"eye": "left", "muscle": "SO", "grade": 2}]}, False, id="superior-oblique-overacts"),
    pytest.param({"versions": [{"eye": "left", "muscle": "IO", "grade": -2}]}, False, id="inferior-oblique-underacts"),
    pytest.param({}, False, id="nothing"),
]


@pytest.mark.parametrize(("shown", "asked"), SUSPECTED)
def test_signs_of_both_sides_are_looked_for_only_where_one_is_suspected(shown, asked):
    assert bool(said(found(straight(-20), **shown), "bilateral_superior_oblique")) == asked


def test_the_three_step_test_alone_raises_the_suspicion():
    assert said(found(*verticals("right", "left", "right")), "bilateral_superior_oblique")
    assert not said(found(*verticals("right", "right", "right")), "bilateral_superior_oblique")


FOURTH = {"diagnoses": [{"diagnosis": "fourth nerve palsy"}]}


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("readings", "rest", "sign"),
    [
        # Sydnor, Seaber & Buckley, Ophthalmology 1982;89:134-8: over 25 Δ, over 10 degrees, hyper that alternates
        pytest.param([straight(0), taken("up", -20), taken("down", 6)], {}, "bilateral_v", id="v-26"),
        pytest.param([straight(0)], {"excyclotorsion_down_deg": 12}, "bilateral_torsion", id="12-degrees"),
        pytest.param(
            [straight(0, 0), taken("tilt_right", 0, 8), taken("tilt_left", 0, -8)],
            {},
            "bilateral_alternates",
            id="tilt",
        ),
        pytest.param(
            [straight(0, 0), taken("left", 0, 8), taken("right", 0, -8)], {}, "bilateral_alternates", id="side-gaze"
        ),
        # Dotan et al., J Pediatr Ophthalmol Strabismus 2014;51:333-6
        pytest.param([straight(0, 4)], {}, "bilateral_small_hyper", id="hyper-4"),
    ],
)
def test_signs_of_both_sides(readings, rest, sign):
    findings = found(*readings, **FOURTH, **({"dvd_left_pd": 1} | rest))

    assert said(findings, sign)


def test_alternating_the_wrong_way_is_no_sign():
    """Left hyper on right tilt is what weak inferior obliques make."""
    readings = [straight(0, 0), taken("tilt_right", 0, -8), taken("tilt_left", 0, 8)]

    assert not said(found(*readings, **FOURTH, dvd_left_pd=1), "bilateral_alternates")
