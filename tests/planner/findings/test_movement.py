"""Obliques, torsion, dissociated deviation, limited ductions, and what an earlier operation may have done."""

import pytest

from tests.planner.examined import found, said, straight, taken, the

V_XT = (straight(-30), taken("up", -45), taken("down", -20))
A_XT = (straight(-30), taken("up", -20), taken("down", -45))


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("readings", "muscle", "grade", "code", "goes"),
    [
        # an oblique abducts: too much of the inferior diverges up-gaze, too much of the superior down-gaze
        pytest.param(V_XT, "IO", 2, "oblique_overaction", True, id="io-over-v"),
        pytest.param(V_XT, "SO", -2, "oblique_underaction", True, id="so-under-v"),
        pytest.param(V_XT, "SO", 2, "oblique_overaction", False, id="so-over-v"),
        pytest.param(V_XT, "IO", -2, "oblique_underaction", False, id="io-under-v"),
        pytest.param(A_XT, "SO", 2, "oblique_overaction", True, id="so-over-a"),
        pytest.param(A_XT, "IO", -2, "oblique_underaction", True, id="io-under-a"),
        pytest.param(A_XT, "IO", 2, "oblique_overaction", False, id="io-over-a"),
        pytest.param(A_XT, "SO", -2, "oblique_underaction", False, id="so-under-a"),
    ],
)
def test_an_oblique_and_the_pattern_that_it_makes(readings, muscle, grade, code, goes):
    text = the(found(*readings, versions=[{"eye": "left", "muscle": muscle, "grade": grade}]), code).text

    assert ("it goes with the" in text) == goes
    assert ("it does not go with the" in text) != goes


@pytest.mark.parametrize(("grade", "strength"), [(1, "borderline"), (2, "clear"), (-1, "borderline"), (-4, "clear")])
def test_one_step_of_a_version_is_borderline(grade, strength):
    findings = found(straight(-30), versions=[{"eye": "right", "muscle": "IO", "grade": grade}])

    (finding,) = [each for each in findings.statements if each.code.startswith("oblique_")]
    assert finding.strength == strength


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("torsion", "strength"),
    [
        # J Pediatr Ophthalmol Strabismus 1993;30:361-7: 6 degrees in down-gaze; readings differ by up to 7
        pytest.param({"excyclotorsion_down_deg": 6}, "clear", id="6-in-down-gaze"),
        pytest.param({"excyclotorsion_down_deg": 5.9}, "borderline", id="5.9-in-down-gaze"),
        pytest.param({"excyclotorsion_right_deg": 6}, "borderline", id="6-ahead"),
        pytest.param({"excyclotorsion_right_deg": 4, "excyclotorsion_left_deg": 3}, "borderline", id="7-ahead"),
        pytest.param({"excyclotorsion_right_deg": 5, "excyclotorsion_left_deg": 3}, "clear", id="8-ahead"),
        pytest.param({"excyclotorsion_right_deg": -8}, "clear", id="8-inwards"),
        pytest.param({"excyclotorsion_right_deg": 0}, "cannot tell", id="none"),
    ],
)
def test_torsion_against_the_tested_cut_off(torsion, strength):
    finding = the(found(straight(-30), **torsion), "torsion")

    assert finding.strength == strength
    assert bool(finding.settle) == (strength != "clear")


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("right", "left", "words"),
    [
        # Holmes 2009 used for verticals: 5.8 Δ between two readings to 20 Δ
        pytest.param(12, 6, "unequal beyond measurement error", id="6-apart"),
        pytest.param(12, 6.3, "unequal within measurement error", id="5.7-apart"),
        pytest.param(9, 9, "alike", id="alike"),
        pytest.param(9, 0, "unequal beyond measurement error", id="one-eye"),
    ],
)
def test_a_dissociated_deviation_is_told_from_a_hyper(right, left, words):
    finding = the(found(straight(0), dvd_right_pd=right, dvd_left_pd=left), "dissociated_vertical")

    assert words in finding.text
    assert "either eye fixing" in finding.settle


def test_a_drift_of_which_one_eye_was_measured_asks_for_the_other():
    assert "the other eye" in the(found(straight(0), dvd_right_pd=9), "dissociated_vertical").settle


ANTAGONISTS = [
    ("MR", "lateral rectus"),
    ("LR", "medial rectus"),
    ("SR", "inferior rectus"),
    ("IR", "superior rectus"),
    ("SO", "inferior oblique"),
    ("IO", "superior oblique"),
]


def limited(muscle="LR", grade=-3, felt=None, **rest):
    moved = [{"eye": "left", "muscle": muscle, "grade": grade}] if grade is not None else []
    forced = [{"eye": "left", "muscle": muscle, "result": felt}] if felt else []
    return found(rest.pop("reading", straight(30)), ductions=moved, forced_ductions=forced, **rest)


@pytest.mark.parametrize(("muscle", "tight"), ANTAGONISTS)
def test_a_movement_held_back_suggests_its_antagonist(muscle, tight):
    finding = the(limited(muscle, felt="restricted"), "limited_duction")

    assert f"a tight {tight}" in finding.text
    assert (finding.facts["suggests"], finding.strength) == ("restriction", "clear")


@pytest.mark.parametrize(
    ("grade", "felt", "suggests", "strength"),
    [
        (-3, "free", "palsy", "clear"),
        (-1, "free", "palsy", "borderline"),
        (-2, "restricted", "restriction", "clear"),
        (-1, "restricted", "restriction", "borderline"),
        (-4, None, "cannot be told", "cannot tell"),
        (None, "restricted", "restriction", "borderline"),
        (0, "restricted", "restriction", "borderline"),
    ],
)
def test_palsy_or_restriction(grade, felt, suggests, strength):
    finding = the(limited(grade=grade, felt=felt), "limited_duction")

    assert (finding.facts["suggests"], finding.strength) == (suggests, strength)
    assert ("suxamethonium" in finding.settle) == (felt is None)


@pytest.mark.parametrize(("grade", "felt"), [(0, None), (0, "free"), (None, "free")])
def test_a_full_and_free_movement_is_no_finding(grade, felt):
    assert not said(limited(grade=grade, felt=felt), "limited_duction")


def test_a_version_alone_asks_for_the_duction():
    version = {"versions": [{"eye": "left", "muscle": "LR", "grade": -2}]}

    assert the(found(straight(30), **version), "limited_version").strength == "cannot tell"
    assert not said(limited(grade=-2, **version), "limited_version")


def operated(muscle, operation="recess", eye="left", **rest):
    return {"previous_operations": [{"eye": eye, "muscle": muscle, "operation": operation, **rest}]}


@pytest.mark.parametrize(
    ("muscle", "grade", "felt", "reading", "suspected"),
    [
        # from memory: weakness in the field of an operated muscle, a deviation away from it
        pytest.param("MR", -1, None, straight(-30), True, id="medial-and-exo"),
        pytest.param("MR", -1, None, straight(30), False, id="medial-and-eso"),
        pytest.param("MR", -2, None, straight(30), True, id="medial-surely-short"),
        pytest.param("MR", -3, "free", straight(-30), True, id="free-by-hand"),
        pytest.param("MR", -3, "restricted", straight(-30), False, id="held-back-by-hand"),
        pytest.param("LR", -1, None, straight(30), True, id="lateral-and-eso"),
        pytest.param("SR", -1, None, straight(0, 8), True, id="left-superior-and-right-hyper"),
        pytest.param("SR", -1, None, straight(0, -8), False, id="left-superior-and-left-hyper"),
        pytest.param("IR", -1, None, straight(0, -8), True, id="left-inferior-and-left-hyper"),
        pytest.param("IR", -1, None, straight(0, 8), False, id="left-inferior-and-right-hyper"),
    ],
)
def test_a_muscle_that_may_have_slipped(muscle, grade, felt, reading, suspected):
    findings = limited(muscle, grade, felt, reading=reading, **operated(muscle))

    assert bool(said(findings, "slipped_muscle")) == suspected
    assert bool(findings.previous.slipped) == suspected


def test_a_muscle_never_operated_has_not_slipped():
    assert not said(limited("MR", -3, reading=straight(-30), **operated("MR", eye="right")), "slipped_muscle")


def test_a_slip_is_never_certain_and_says_how_to_find_out():
    free = the(limited("MR", -3, "free", reading=straight(-30), **operated("MR")), "slipped_muscle")
    untested = the(limited("MR", -3, reading=straight(-30), **operated("MR")), "slipped_muscle")

    assert (free.strength, untested.strength) == ("borderline", "cannot tell")
    assert "image the muscle" in free.settle


@pytest.mark.parametrize(
    ("muscle", "operation", "now", "consecutive"),
    [
        ("MR", "recess", -20, True),
        ("MR", "recess", 20, False),
        ("LR", "resect", -20, True),
        ("LR", "recess", 20, True),
        ("MR", "resect", 20, True),
        ("LR", "recess", -20, False),
        ("MR", "other", -20, False),
        ("SR", "recess", -20, False),
    ],
)
def test_a_deviation_turned_round_by_surgery_is_consecutive(muscle, operation, now, consecutive):
    assert bool(said(found(straight(now), **operated(muscle, operation)), "consecutive_deviation")) == consecutive


@pytest.mark.parametrize(
    ("rest", "strength"),
    [({"mm": 5}, "clear"), ({}, "cannot tell"), ({"operation": "unknown", "mm": 5}, "cannot tell")],
)
def test_what_was_done_before_is_told_and_what_is_missing_asked_for(rest, strength):
    finding = the(found(straight(-20), **operated("MR", **rest)), "previous_surgery")

    assert finding.strength == strength
    assert bool(finding.settle) == (strength != "clear")
