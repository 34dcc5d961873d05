"""Vertical recti: which, how much, and where there is no dose."""

import pytest

from planner.provenance import Mark
from tests.planner.additions.pieces import additions, diagnosed, graded, levels, work
from tests.planner.patients import before, change, codes, reading

ONE = ("recess-sr-{high}", "recess-ir-{low}", "resect-ir-{high}", "resect-sr-{low}")
TWO = ("recess-sr-{high}-recess-ir-{low}", "recess-sr-{high}-resect-ir-{high}", "recess-ir-{low}-resect-sr-{low}")


@pytest.mark.parametrize(("sign", "high", "low"), [(1, "right", "left"), (-1, "left", "right")])
@pytest.mark.parametrize(("size", "offered"), [(5, ()), (6, ONE), (15, ONE), (16, ONE + TWO), (40, ONE + TWO)])
def test_the_size_decides_how_many_muscles_are_offered(sign, high, low, size, offered):
    """From 6 Δ (2 mm, the least useful, at 3 Δ/mm) one rectus; beyond 15 Δ two as well (common practice)."""
    expected = {id_.format(high=high, low=low) for id_ in offered}

    assert set(additions(0, vertical_pd=sign * size)) == expected if size != 5 else True
    assert set(additions(20, vertical_pd=sign * size)) == expected


@pytest.mark.parametrize(
    ("hyper", "mm"), [(6, 2.0), (7.5, 2.5), (9, 3.0), (10, 3.5), (11, 3.5), (12, 4.0), (15, 5.0), (6.75, 2.0)]
)
def test_a_rectus_gets_three_prism_dioptres_per_millimetre_to_the_half(hyper, mm):
    """Wright: about 3 Δ per mm. 10 Δ are 3.33 mm and so 3.5; 6.75 are 2.25, and a tie goes to the smaller dose."""
    offered = additions(0, vertical_pd=hyper)

    for id_, muscle, operation in (
        ("recess-sr-right", "SR", "recess"),
        ("recess-ir-left", "IR", "recess"),
        ("resect-ir-right", "IR", "resect"),
        ("resect-sr-left", "SR", "resect"),
    ):
        assert work(offered[id_]) == {(id_.rsplit("-", 1)[1], muscle, operation): mm}


@pytest.mark.parametrize(
    ("id_", "limbus", "insertion"),
    [
        # Fuchs 1884: IR 6.5, SR 7.7 mm; 4 mm behind after a recession
        ("recess-sr-right", 11.7, 7.7),
        ("recess-ir-left", 10.5, 6.5),
        ("resect-ir-right", 6.5, 6.5),
        ("resect-sr-left", 7.7, 7.7),
    ],
)
def test_the_distance_from_the_limbus_stands_beside_the_dose(id_, limbus, insertion):
    (dose,) = additions(0, vertical_pd=12)[id_].doses

    assert (dose.limbus_mm, dose.insertion_mm) == (limbus, insertion)


@pytest.mark.parametrize(("hyper", "mm", "level"), [(15, 5.0, None), (18, 6.0, "caution"), (24, 8.0, "caution")])
def test_a_superior_rectus_recession_above_the_usual_maximum_is_cautioned(hyper, mm, level):
    """SR recession 5 mm, 8 the widest (from memory, verify)."""
    option = additions(0, vertical_pd=hyper)["recess-sr-right"]

    assert work(option) == {("right", "SR", "recess"): mm}
    assert levels(option).get("above_usual_maximum-right-sr") == level


@pytest.mark.parametrize(
    ("id_", "hyper"),
    [("recess-ir-left", 18), ("resect-ir-right", 18), ("resect-sr-left", 18), ("recess-sr-right", 27)],
)
def test_beyond_the_widest_maximum_there_is_no_dose(id_, hyper):
    option = additions(0, vertical_pd=hyper)[id_]

    assert option.doses == option.expected == ()
    assert "stop" in levels(option).values()


def test_two_muscles_share_the_deviation():
    option = additions(0, vertical_pd=20)["recess-sr-right-recess-ir-left"]

    assert work(option) == {("right", "SR", "recess"): 3.5, ("left", "IR", "recess"): 3.5}
    assert (option.expected[0].before, option.expected[0].correction, option.expected[0].residual) == (20, 21, -1)


@pytest.mark.parametrize(("eye", "mm"), [(None, 3.5), ("left", 3.5), ("right", 4.0)])
def test_the_inferior_rectus_of_a_thyroid_eye_gets_three_and_a_half(eye, mm):
    """PMC6081543: 3.5 Δ/mm, so 12 Δ are 3.43 mm; with the disease in the other eye alone the usual 3 Δ/mm hold."""
    option = additions(0, vertical_pd=12, diagnoses=(diagnosed("thyroid eye disease", eye),))["recess-ir-left"]

    assert work(option) == {("left", "IR", "recess"): mm}


def test_the_spread_is_that_of_the_measured_recessions_and_none_of_resections():
    """Bae & Choi 2012, late: 2.94 ± 1.64 Δ/mm (n = 28); 4 mm scatter by 6.56."""
    offered = additions(0, vertical_pd=12)

    assert offered["recess-sr-right"].expected[0].spread == 6.6
    assert offered["resect-ir-right"].expected[0].spread is None


def test_left_hyper_is_negative_in_what_is_expected_too():
    (expected,) = additions(0, vertical_pd=-12)["recess-sr-left"].expected

    assert (expected.before, expected.correction, expected.residual) == (-12, -12, 0)


def test_a_muscle_is_preferred_in_whose_field_the_deviation_is_larger():
    offered = additions(0, reading(0, 5, "up"), reading(0, 20, "down"), vertical_pd=12)

    assert "acts_where_larger" in codes(offered["recess-ir-left"].reasons_for)
    assert "acts_where_smaller" in codes(offered["recess-sr-right"].reasons_against)
    assert next(iter(offered)) == "recess-ir-left"


def test_up_and_down_gaze_that_differ_within_error_decide_nothing():
    offered = additions(0, reading(0, 11, "up"), reading(0, 13, "down"), vertical_pd=12)

    assert codes(offered["recess-ir-left"].reasons_for) == codes(offered["recess-sr-right"].reasons_for)


def test_the_surgeons_own_figure_counts():
    set_by_hand = change("recess-ir-left", "left", "IR", 3.0)
    option = additions(0, vertical_pd=12, changes=(set_by_hand,))["recess-ir-left"]

    assert (option.doses[0].mm, option.doses[0].table_mm, option.doses[0].changed) == (3.0, 4.0, True)
    assert option.expected[0].residual == 3


def test_a_muscle_operated_before_is_cautioned():
    option = additions(0, vertical_pd=12, previous_operations=(before("left", "IR", "recess", 3.0),))["recess-ir-left"]

    assert levels(option)["operated_muscle-left-ir"] == "caution"
    assert levels(option)["reserve_exceeded-left-ir"] == "stop"


def test_every_figure_has_its_source():
    for option in additions(0, vertical_pd=20, versions=(graded("right", "IO", 2), graded("right", "SO", -2))).values():
        said = [*option.notices, *(step for dose in option.doses for step in dose.steps)]

        assert all(each.provenance.source for each in said)
        assert all(each.provenance.mark in Mark for each in said)
