"""The near-distance class by the 10 Δ rule, with the patch and +3.00 tests."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.accommodation import NearDistanceClass, NearTests, classify
from planner.precision import Strength
from planner.provenance import Mark

Class = NearDistanceClass
UNTESTED = NearTests()

BURIAN = [
    pytest.param(-30, -30, UNTESTED, Class.BASIC, id="exo-equal-basic"),
    pytest.param(-30, -21, UNTESTED, Class.BASIC, id="exo-9-less-at-near-basic"),
    pytest.param(-30, -39, UNTESTED, Class.BASIC, id="exo-9-more-at-near-basic"),
    pytest.param(-30, -20, UNTESTED, Class.DIVERGENCE_EXCESS_UNTESTED, id="exo-10-less-at-near-untested"),
    pytest.param(-30, -10, NearTests(patched_pd=-12), Class.DIVERGENCE_EXCESS, id="patch-changes-nothing-true"),
    pytest.param(-30, -10, NearTests(patched_pd=-20), Class.DIVERGENCE_EXCESS, id="patch-leaves-10-true"),
    pytest.param(
        -30, -10, NearTests(patched_pd=-25), Class.SIMULATED_DIVERGENCE_EXCESS, id="patch-closes-up-simulated"
    ),
    pytest.param(
        -30,
        -10,
        NearTests(patched_pd=-12, plus_three_pd=-28),
        Class.DIVERGENCE_EXCESS_HIGH_ACA,
        id="plus-3-closes-up-high-aca",
    ),
    pytest.param(
        -30,
        -10,
        NearTests(patched_pd=-12, plus_three_pd=-14),
        Class.DIVERGENCE_EXCESS,
        id="plus-3-changes-nothing-true",
    ),
    pytest.param(
        -30,
        -10,
        NearTests(patched_pd=-27, plus_three_pd=-28),
        Class.SIMULATED_DIVERGENCE_EXCESS,
        id="patch-is-read-before-plus-3",
    ),
    pytest.param(-20, -30, UNTESTED, Class.CONVERGENCE_INSUFFICIENCY, id="exo-10-more-at-near"),
    pytest.param(0, -12, UNTESTED, Class.CONVERGENCE_INSUFFICIENCY, id="exo-only-at-near"),
]
ESO = [
    pytest.param(40, 49, Class.BASIC, id="eso-9-more-at-near-basic"),
    pytest.param(40, 50, Class.HIGH_ACA_ESO, id="eso-10-more-at-near-pmc6825697"),
    pytest.param(0, 20, Class.HIGH_ACA_ESO, id="eso-only-at-near-pmc6825697"),
    pytest.param(30, 20, Class.DISTANCE_ESO, id="eso-10-more-at-distance"),
]


@pytest.mark.parametrize(("distance_pd", "near_pd", "tests", "found"), BURIAN)
def test_exodeviations_after_burian(distance_pd, near_pd, tests, found):
    """Burian's types by the 10 Δ rule, from memory."""
    result = classify(distance_pd=distance_pd, near_pd=near_pd, tests=tests)

    assert result.near_distance_class is found
    assert result.statement.provenance.mark is Mark.FROM_MEMORY


@pytest.mark.parametrize(("distance_pd", "near_pd", "found"), ESO)
def test_esodeviations(distance_pd, near_pd, found):
    """PMC6825697: clinical high AC/A where near exceeds distance by 10 Δ or more."""
    assert classify(distance_pd=distance_pd, near_pd=near_pd).near_distance_class is found


def test_divergence_excess_asks_for_the_patch_test():
    result = classify(distance_pd=-40, near_pd=-15)

    assert result.strength is Strength.CANNOT_TELL
    assert "Patch one eye" in result.settle


def test_true_divergence_excess_asks_for_plus_3():
    assert "+3.00" in classify(distance_pd=-40, near_pd=-15, tests=NearTests(patched_pd=-15)).settle


def test_a_difference_of_12_above_20_is_beyond_measurement_error_and_yet_borderline_for_the_10_rule():
    """sqrt(7.3^2 + 8.3^2) = 11.05 Δ from Holmes 2009: 12 exceeds it, but not 10 by enough."""
    result = classify(distance_pd=40, near_pd=52)

    assert (result.difference_pd, result.limits_pd) == (12, 11.1)
    assert result.beyond_error
    assert result.strength is Strength.BORDERLINE
    assert result.settle


def test_a_large_difference_is_clear_and_settled():
    result = classify(distance_pd=20, near_pd=45)

    assert (result.strength, result.settle) == (Strength.CLEAR, "")


def test_equal_readings_are_clearly_basic():
    assert classify(distance_pd=40, near_pd=40).strength is Strength.CLEAR


READINGS = st.integers(-80, 80)


@given(READINGS, READINGS)
def test_basic_is_exactly_what_differs_by_less_than_10(distance_pd, near_pd):
    result = classify(distance_pd=distance_pd, near_pd=near_pd)

    assert (result.near_distance_class is Class.BASIC) == (abs(near_pd - distance_pd) < 10)


@given(st.integers(-80, -20), st.integers(10, 20), st.integers(0, 40), st.integers(0, 20))
def test_more_exo_after_the_patch_never_turns_simulated_into_true(distance_pd, less_pd, patched_pd, more_pd):
    def found(patched):
        return classify(
            distance_pd=distance_pd, near_pd=distance_pd + less_pd, tests=NearTests(patched_pd=patched)
        ).near_distance_class

    first, then = found(distance_pd + patched_pd), found(distance_pd + patched_pd - more_pd)
    assert not (first is Class.SIMULATED_DIVERGENCE_EXCESS and then is Class.DIVERGENCE_EXCESS)
