"""A head posture fits if it puts the eyes where the deviation is smaller."""

import pytest

from tests.planner.examined import found, said, straight, taken, the

A_ET = (straight(30), taken("up", 45), taken("down", 20))
V_ET = (straight(30), taken("up", 20), taken("down", 45))
A_XT = (straight(-30), taken("up", -20), taken("down", -45))
LEFT_SIXTH = (straight(40), taken("right", 15), taken("left", 60))
V_XT = (straight(-30), taken("up", -45), taken("down", -20))


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("readings", "chin"),
    [
        # PMC4330283, Table 1
        pytest.param(A_ET, "up", id="a-esotropia-chin-up"),
        pytest.param(V_XT, "up", id="v-exotropia-chin-up"),
        pytest.param(A_XT, "down", id="a-exotropia-chin-down"),
        pytest.param(V_ET, "down", id="v-esotropia-chin-down"),
    ],
)
def test_the_chin_by_the_printed_table(readings, chin):
    other = {"up": "down", "down": "up"}[chin]

    assert the(found(*readings, head_posture={"chin": chin}), "chin_posture").facts["fits"] == "yes"
    assert the(found(*readings, head_posture={"chin": other}), "chin_posture").facts["fits"] == "no"
    assert the(found(*readings, head_posture={"chin": chin}), "chin_posture").provenance.mark == "published"


@pytest.mark.parametrize(
    ("readings", "posture", "code", "fits", "strength"),
    [
        # left sixth nerve palsy: the face is turned to the left, the eyes look right, away from the weak muscle
        pytest.param(LEFT_SIXTH, {"turn": "left"}, "face_turn", "yes", "clear", id="away-from-the-palsy"),
        pytest.param(LEFT_SIXTH, {"turn": "right"}, "face_turn", "no", "clear", id="towards-the-palsy"),
        pytest.param(
            [straight(40), taken("right", 40), taken("left", 41)],
            {"turn": "left"},
            "face_turn",
            "cannot tell",
            "cannot tell",
            id="alike-in-side-gaze",
        ),
        pytest.param(
            [straight(40)], {"turn": "left"}, "face_turn", "cannot tell", "cannot tell", id="side-gaze-not-measured"
        ),
        # right superior oblique palsy: tilted to the left, J AAPOS 2009;13:132-5
        pytest.param(
            [straight(0, 12), taken("tilt_right", 0, 20), taken("tilt_left", 0, 5)],
            {"tilt": "left"},
            "head_tilt",
            "yes",
            "clear",
            id="superior-oblique-palsy",
        ),
        pytest.param(
            [straight(0, 12), taken("tilt_right", 0, 20), taken("tilt_left", 0, 5)],
            {"tilt": "right"},
            "head_tilt",
            "no",
            "clear",
            id="tilted-towards-the-palsy",
        ),
        pytest.param(
            [straight(0, 12), taken("tilt_right", 0, 12), taken("tilt_left", 0, 8)],
            {"tilt": "left"},
            "head_tilt",
            "yes",
            "borderline",
            id="4-on-tilt-are-within-error",
        ),
        # no letter: by where the eyes are put
        pytest.param(
            [straight(-30), taken("up", -36), taken("down", -28)],
            {"chin": "up"},
            "chin_posture",
            "yes",
            "borderline",
            id="chin-without-a-pattern",
        ),
    ],
)
def test_a_posture_fits_where_the_deviation_is_smaller(readings, posture, code, fits, strength):
    finding = the(found(*readings, head_posture=posture), code)

    assert (finding.facts["fits"], finding.strength) == (fits, strength)
    assert bool(finding.settle) == ((fits, strength) != ("yes", "clear"))


def test_each_part_of_a_posture_has_its_sentence():
    posture = {"turn": "left", "turn_deg": 15, "tilt": "right", "chin": "down", "chin_deg": 10}
    findings = found(straight(30), head_posture=posture)

    assert [said(findings, code)[0].text.split(":")[0] for code in ("face_turn", "head_tilt", "chin_posture")] == [
        "Face turned left by 15 degrees",
        "Head tilted right",
        "Chin down by 10 degrees",
    ]


def test_no_posture_no_sentence():
    findings = found(straight(30))

    assert not [each for each in findings.statements if each.code in {"face_turn", "head_tilt", "chin_posture"}]
