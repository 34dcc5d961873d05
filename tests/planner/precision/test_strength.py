"""Clear, borderline within measurement error, cannot tell."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import norm

from planner.precision import Strength, sign_strength, threshold_strength, weakest
from planner.precision.strength import ONE_SIDED_95, TWO_SIDED_95

CLEAR, BORDERLINE, CANNOT_TELL = Strength


def test_the_quantiles_are_those_of_the_normal_distribution():
    """scipy.stats."""
    assert norm.ppf(0.975) == pytest.approx(TWO_SIDED_95, abs=0.0005)
    assert norm.ppf(0.95) == pytest.approx(ONE_SIDED_95, abs=0.0005)


@pytest.mark.parametrize(
    ("difference_pd", "strength"),
    [(5.8, CLEAR), (5.7, BORDERLINE), (3.0, BORDERLINE), (2.9, CANNOT_TELL), (0, CANNOT_TELL)],
)
def test_a_direction_is_clear_from_the_limits_on(difference_pd, strength):
    """Limits 5.8: clear from 5.8, borderline from 5.8 / 1.96 = 2.96."""
    assert sign_strength(difference_pd, 5.8) is strength


@given(st.floats(0.1, 30), st.floats(0.1, 30))
def test_a_clear_direction_is_wrong_less_than_once_in_40(size_pd, limits_pd):
    """scipy.stats: the chance of the other sign under a normal error."""
    wrong = norm.cdf(0, loc=size_pd, scale=limits_pd / 1.96)
    if sign_strength(size_pd, limits_pd) is CLEAR:
        assert wrong <= 0.0251
    else:
        assert wrong >= 0.0249


@given(st.floats(-40, 40), st.floats(0, 30), st.floats(0.1, 20))
def test_a_clear_side_of_a_threshold_is_wrong_less_than_once_in_20(value_pd, threshold_pd, limits_pd):
    wrong = norm.cdf(-abs(value_pd - threshold_pd) / (limits_pd / 1.96))
    if threshold_strength(value_pd, threshold_pd, limits_pd) is CLEAR:
        assert wrong <= 0.0501
    else:
        assert wrong >= 0.0499


@given(st.floats(-40, 40), st.floats(0.1, 20))
def test_both_directions_are_judged_alike(difference_pd, limits_pd):
    assert sign_strength(difference_pd, limits_pd) is sign_strength(-difference_pd, limits_pd)


def test_a_chain_is_as_strong_as_its_weakest_link():
    assert weakest(CLEAR, BORDERLINE) is BORDERLINE
    assert weakest(CANNOT_TELL, BORDERLINE, CLEAR) is CANNOT_TELL
    assert weakest(CLEAR) is CLEAR
