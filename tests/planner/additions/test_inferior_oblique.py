"""The inferior oblique: graded by the deviation in adduction, or by its place against the inferior rectus."""

import pytest

from tests.planner.additions.pieces import additions, graded, levels, work
from tests.planner.patients import change, reading

OVERACTS = {"right": (graded("right", "IO", 2),), "left": (graded("left", "IO", 2),)}


@pytest.mark.parametrize("eye", ["right", "left"])
@pytest.mark.parametrize(
    ("adduction", "operation", "mm"),
    [
        # J Egypt Ophthalmol Soc 2016;109:161-6: below 15 Δ 8 to 10 mm, above 12 mm with anteriorisation
        (8, "recess", 8),
        (14.9, "recess", 8),
        (15, "recess", 8),
        (15.1, "anteriorise", 12),
        (30, "anteriorise", 12),
    ],
)
def test_the_deviation_in_adduction_grades_the_weakening(eye, adduction, operation, mm):
    sign, gaze = (1, "left") if eye == "right" else (-1, "right")
    offered = additions(0, reading(0, sign * adduction, gaze), vertical_pd=sign * 10, versions=OVERACTS[eye])

    assert work(offered[f"weaken-io-{eye}"]) == {(eye, "IO", operation): mm}


def test_without_the_deviation_in_adduction_there_is_no_dose():
    option = additions(0, reading(0, 18, "right"), vertical_pd=10, versions=OVERACTS["right"])["weaken-io-right"]

    assert option.doses == ()
    assert levels(option)["adduction_not_measured-right"] == "stop"


def test_no_distance_from_the_limbus_is_made_up():
    (dose,) = additions(0, reading(0, 8, "left"), vertical_pd=10, versions=OVERACTS["right"])["weaken-io-right"].doses

    assert (dose.limbus_mm, dose.insertion_mm, dose.caliper_mm) == (None, None, None)
    assert "8 to 10 mm" in dose.attachment_words


@pytest.mark.parametrize("versions", [(), (graded("right", "IO", 0),), (graded("right", "IO", -1),), OVERACTS["left"]])
def test_an_inferior_oblique_that_does_not_overact_is_left_alone(versions):
    offered = additions(0, reading(0, 18, "left"), vertical_pd=20, versions=versions)

    assert not any("-io-" in id_ for id_ in offered)


@pytest.mark.parametrize(("mm", "level"), [(9.0, None), (10.0, None), (10.5, "caution"), (7.5, "caution")])
def test_the_surgeon_chooses_within_what_print_says(mm, level):
    changes = (change("weaken-io-right", "right", "IO", mm),)
    option = additions(0, reading(0, 8, "left"), vertical_pd=10, versions=OVERACTS["right"], changes=changes)[
        "weaken-io-right"
    ]

    assert work(option) == {("right", "IO", "recess"): mm}
    assert levels(option).get("outside_print-right-io") == level


@pytest.mark.parametrize(
    ("hyper", "words", "correction", "spread"),
    [
        # Can J Ophthalmol 2022, S0008-4182(22)00049-7 (n = 38): 9.5 / 12.4 / 16.7 / 19.6 / 22.6 Δ
        (9.5, "2 mm behind", 9.5, 0.9),
        (12.4, "1 mm behind", 12.4, 1.5),
        (16.7, "level with", 16.7, 1.4),
        (19.6, "1 mm ahead", 19.6, 1.7),
        (22.6, "2 mm ahead", 22.6, 5.8),
        (10.9, "2 mm behind", 9.5, 0.9),
        (11.0, "1 mm behind", 12.4, 1.5),
        (14.6, "level with", 16.7, 1.4),
        (32.6, "2 mm ahead", 22.6, 5.8),
    ],
)
def test_the_nearest_published_place_is_taken(hyper, words, correction, spread):
    option = additions(0, vertical_pd=hyper, versions=OVERACTS["right"])["anteriorise-io-right"]
    (dose,), (expected,) = option.doses, option.expected

    assert words in dose.attachment_words
    assert dose.mm is None
    assert (expected.correction, expected.spread) == (correction, spread)


def test_nothing_is_carried_beyond_the_published_places():
    assert "anteriorise-io-right" not in additions(0, vertical_pd=9, versions=OVERACTS["right"])
    far = additions(0, vertical_pd=32.7, versions=OVERACTS["right"])["anteriorise-io-right"]

    assert far.doses == ()
    assert levels(far)["beyond_last_place"] == "stop"


@pytest.mark.parametrize(
    ("hyper", "words", "mm"),
    [
        # what the place leaves at 3 Δ/mm: 20 - 12.4 = 7.6 and 2.5 mm; 22.7 - 16.7 = 6 and 2 mm; 30 - 16.7 and 4.5 mm
        (16, "2 mm behind", 2.0),
        (20, "1 mm behind", 2.5),
        (22.7, "level with", 2.0),
        (30, "level with", 4.5),
    ],
)
def test_two_muscles_share_more_than_fifteen(hyper, words, mm):
    option = additions(0, vertical_pd=hyper, versions=OVERACTS["right"])["anteriorise-io-right-recess-ir-left"]

    assert words in option.doses[0].attachment_words
    assert work(option) == {("right", "IO", "anteriorise"): None, ("left", "IR", "recess"): mm}


def test_up_to_fifteen_one_muscle_is_enough():
    assert "anteriorise-io-right-recess-ir-left" not in additions(0, vertical_pd=15, versions=OVERACTS["right"])


def test_one_side_brought_forward_is_cautioned():
    option = additions(0, vertical_pd=12, versions=OVERACTS["right"])["anteriorise-io-right"]

    assert levels(option)["may_limit_elevation-right"] == "caution"
