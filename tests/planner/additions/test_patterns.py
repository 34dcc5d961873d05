"""A and V patterns: obliques if they overact, otherwise tendons moved up or down."""

import pytest

from planner.provenance import Mark
from planner.values.option import OffsetDirection, OffsetWidth
from tests.planner.additions.pieces import additions, graded, levels, work
from tests.planner.patients import reading

NONE_OVERACT = tuple(graded(eye, muscle, 0) for eye in ("right", "left") for muscle in ("IO", "SO"))


def pattern(horizontal_pd, change_pd, *others, **rest):
    """``change_pd``: eso + in down-gaze less that in up-gaze, V +, half above and half below the primary position."""
    up, down = horizontal_pd - change_pd / 2, horizontal_pd + change_pd / 2
    rest = {"versions": NONE_OVERACT} | rest
    return additions(horizontal_pd, reading(up, gaze="up"), reading(down, gaze="down"), *others, **rest)


def ways(option):
    return {(dose.eye.value, dose.muscle.value): dose.offset.direction.value for dose in option.doses}


@pytest.mark.parametrize("horizontal_pd", [30, -30], ids=["eso", "exo"])
@pytest.mark.parametrize(
    ("letter", "change_pd", "medial", "lateral"), [("V", 20, "down", "up"), ("A", -20, "up", "down")]
)
def test_medial_recti_go_to_the_apex_and_lateral_recti_to_the_open_end(
    letter, change_pd, medial, lateral, horizontal_pd
):
    """V: Vaughan & Asbury; A: from memory, verify. Both eyes and each eye alone."""
    offered = pattern(horizontal_pd, change_pd)

    assert ways(offered["offset-both-mr"]) == {("right", "MR"): medial, ("left", "MR"): medial}
    assert ways(offered["offset-both-lr"]) == {("right", "LR"): lateral, ("left", "LR"): lateral}
    for eye in ("right", "left"):
        assert ways(offered[f"offset-mr-lr-{eye}"]) == {(eye, "MR"): medial, (eye, "LR"): lateral}


@pytest.mark.parametrize(("change_pd", "mark"), [(20, Mark.PUBLISHED), (-20, Mark.FROM_MEMORY)])
def test_the_direction_carries_its_mark(change_pd, mark):
    (dose, _) = pattern(30, change_pd)["offset-both-mr"].doses
    (step,) = [step for step in dose.steps if step.code == "offset_direction"]

    assert step.provenance.mark is mark


@pytest.mark.parametrize(
    ("change_pd", "width"),
    [(15, OffsetWidth.HALF), (25, OffsetWidth.HALF), (25.2, OffsetWidth.FULL), (-10, OffsetWidth.HALF)],
)
def test_half_a_width_up_to_25_and_a_full_one_beyond(change_pd, width):
    """J Pediatr Ophthalmol Strabismus 2019;56:107-15."""
    assert {dose.offset.width for dose in pattern(-30, change_pd)["offset-both-lr"].doses} == {width}


@pytest.mark.parametrize(
    ("change_pd", "id_", "mm"),
    [
        # insertion widths (from memory, verify): MR 10.3-11.3, LR 9.2-10.1 mm, their middle, to the half millimetre
        (20, "offset-both-mr", 5.5),
        (20, "offset-both-lr", 5.0),
        (40, "offset-both-mr", 11.0),
        (40, "offset-both-lr", 9.5),
    ],
)
def test_the_width_in_millimetres(change_pd, id_, mm):
    assert {dose.offset.mm for dose in pattern(-30, change_pd)[id_].doses} == {mm}


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("horizontal_pd", "change_pd", "id_", "mean", "sd"),
    [
        # J Pediatr Ophthalmol Strabismus 2019;56:107-15, V exotropia
        (-30, 20, "offset-both-lr", 13.1, 3.8),
        (-30, 40, "offset-both-lr", 35.6, 13.7),
        (-30, 20, "offset-mr-lr-right", 13.8, 7.9),
        # nothing published: other muscles, an A, an esodeviation
        (-30, 20, "offset-both-mr", None, None),
        (-30, 40, "offset-mr-lr-right", None, None),
        (-30, -20, "offset-both-lr", None, None),
        (30, 20, "offset-both-lr", None, None),
        (30, -20, "offset-both-mr", None, None),
    ],
)
def test_the_collapse_is_the_published_one_or_none(horizontal_pd, change_pd, id_, mean, sd):
    (expected,) = pattern(horizontal_pd, change_pd)[id_].expected

    assert (expected.before, expected.correction, expected.spread) == (change_pd, mean, sd)


def test_a_full_width_names_the_disagreement_of_its_sources():
    option = pattern(-30, 40)["offset-both-lr"]
    (notice,) = [each for each in option.notices if each.code == "full_offset_disagreement"]

    assert (notice.facts["measured_pd"], notice.facts["taught_from_pd"], notice.facts["taught_to_pd"]) == (35.6, 20, 25)
    assert notice.level == "caution"


def test_no_pattern_no_offset():
    assert pattern(30, 14) == pattern(30, -9) == {}


@pytest.mark.parametrize(
    ("change_pd", "overacting", "id_"),
    [
        (20, ("IO",), "pattern-weaken-io-both"),
        (-20, ("SO",), "pattern-weaken-so-both"),
    ],
)
def test_obliques_that_overact_are_operated_instead(change_pd, overacting, id_):
    versions = tuple(graded(eye, muscle, 2) for eye in ("right", "left") for muscle in overacting)
    sides = (reading(30, 10, "left"), reading(30, -10, "right"))

    assert set(pattern(30, change_pd, *sides, versions=versions)) == {id_}


@pytest.mark.parametrize(("change_pd", "other"), [(20, "SO"), (-20, "IO")])
def test_obliques_that_do_not_make_such_a_pattern_change_nothing(change_pd, other):
    versions = NONE_OVERACT
    versions = tuple(each for each in versions if each.muscle != other)
    versions += (graded("right", other, 2), graded("left", other, 2))

    assert "offset-both-mr" in pattern(30, change_pd, versions=versions)


@pytest.mark.parametrize(
    ("right", "left", "doses"),
    [
        (10, 10, {("right", "IO", "recess"): 8, ("left", "IO", "recess"): 8}),
        (20, 10, {("right", "IO", "anteriorise"): 12, ("left", "IO", "recess"): 8}),
    ],
)
def test_each_inferior_oblique_is_graded_by_its_own_adduction(right, left, doses):
    versions = (graded("right", "IO", 2), graded("left", "IO", 2))
    offered = pattern(30, 20, reading(30, right, "left"), reading(30, -left, "right"), versions=versions)

    assert work(offered["pattern-weaken-io-both"]) == doses


def test_an_a_with_drift_in_both_eyes_has_a_published_combination():
    """Velez et al. 2009: SR recession with SO posterior tenectomy 17 ± 3 Δ."""
    versions = (graded("right", "SO", 2), graded("left", "SO", 2))
    option = pattern(-30, -20, versions=versions, dvd_right_pd=10.0, dvd_left_pd=10.0)[
        "pattern-recess-both-sr-weaken-both-so"
    ]

    assert (option.expected[0].correction, option.expected[0].spread) == (-17, 3)
    assert work(option)[("right", "SR", "recess")] == 5.5


def test_obliques_that_nobody_graded_are_a_caution():
    assert levels(pattern(30, 20, versions=())["offset-both-mr"])["obliques_not_graded"] == "caution"
    assert "obliques_not_graded" not in levels(pattern(30, 20)["offset-both-mr"])


def test_directions_are_up_and_down_alone():
    assert {each.value for each in OffsetDirection} == {"up", "down"}
