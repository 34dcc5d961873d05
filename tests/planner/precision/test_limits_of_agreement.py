"""95 % limits of agreement by size, range and method."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import norm

from planner.precision import Direction, Method, difference_limits_pd, limits_of
from planner.precision.limits import REFLEX_SD_PD
from planner.provenance import Mark
from planner.records.examination import Range

DISTANCE, NEAR = Range.DISTANCE, Range.NEAR

HOLMES_2009 = [
    pytest.param(40, DISTANCE, 7.3, 10.4, id="above-20-distance-holmes-2009"),
    pytest.param(40, NEAR, 8.3, 11.7, id="above-20-near-holmes-2009"),
    pytest.param(15, DISTANCE, 4.1, 5.8, id="10-to-20-distance-holmes-2009"),
    pytest.param(15, NEAR, 3.3, 4.7, id="10-to-20-near-holmes-2009"),
]


@pytest.mark.parametrize(("size_pd", "at", "one_pd", "difference_pd"), HOLMES_2009)
def test_published_limits(size_pd, at, one_pd, difference_pd):
    """Holmes et al. (PEDIG), Arch Ophthalmol 2009;127:59-65, abstract."""
    limits = limits_of(size_pd, at)

    assert (limits.half_width_pd, limits.difference_pd) == (one_pd, difference_pd)
    assert limits.provenance.mark is Mark.PUBLISHED


@pytest.mark.parametrize(("size_pd", "at", "one_pd", "difference_pd"), HOLMES_2009)
def test_the_published_limits_of_a_difference_are_root_2_of_those_of_one(size_pd, at, one_pd, difference_pd):
    """Two independent readings: an identity that ties both published columns together, to their rounding."""
    assert limits_of(size_pd, at).difference_pd == difference_pd
    assert difference_pd == pytest.approx(one_pd * math.sqrt(2), abs=0.1)


@pytest.mark.parametrize("at", Range)
@pytest.mark.parametrize("size_pd", [15, 40])
def test_the_standard_deviation_is_that_of_a_normal_error(size_pd, at):
    """scipy.stats: 95 % of a normal error with this SD lie within the limits."""
    limits = limits_of(size_pd, at)

    assert norm(scale=limits.sd_pd).interval(0.95)[1] == pytest.approx(limits.half_width_pd, abs=0.002)


def test_exactly_20_belongs_to_the_smaller_band():
    """As printed: 'greater than 20' and '10 to 20'."""
    assert limits_of(20, DISTANCE).half_width_pd == 4.1
    assert limits_of(20.1, DISTANCE).half_width_pd == 7.3


def test_below_10_the_nearest_limits_are_used_and_said_to_be_assumed():
    limits = limits_of(6, DISTANCE)

    assert limits.half_width_pd == 4.1
    assert [assumption.code for assumption in limits.assumptions] == ["limits_below_10_assumed"]
    assert limits.assumptions[0].provenance.mark is Mark.HOUSE_RULE


def test_esotropia_in_the_published_range_needs_no_assumption():
    assert limits_of(30, DISTANCE).assumptions == ()


def test_exo_and_vertical_deviations_are_said_to_be_assumed():
    assert [assumption.code for assumption in limits_of(-30, NEAR).assumptions] == ["limits_exo_assumed"]
    vertical = limits_of(-30, NEAR, direction=Direction.VERTICAL)
    assert [assumption.code for assumption in vertical.assumptions] == ["limits_vertical_assumed"]


SHARES_WITHIN_10 = [
    pytest.param(Method.KRIMSKY, NEAR, 0.800, id="prism-reflex-near-80.0-percent-pmid-34851974"),
    pytest.param(Method.KRIMSKY, DISTANCE, 0.700, id="prism-reflex-distance-70.0-percent-pmid-34851974"),
    pytest.param(Method.HIRSCHBERG, NEAR, 0.588, id="light-reflex-near-58.8-percent-pmid-34851974"),
    pytest.param(Method.HIRSCHBERG, DISTANCE, 0.545, id="light-reflex-distance-54.5-percent-pmid-34851974"),
]


@pytest.mark.parametrize(("method", "at", "share"), SHARES_WITHIN_10)
def test_light_reflex_errors_put_the_published_share_within_10(method, at, share):
    """PMID 34851974, abstract; scipy.stats gives the share of a normal error within 10 Δ."""
    error = norm(scale=REFLEX_SD_PD[method, at])

    assert error.cdf(10) - error.cdf(-10) == pytest.approx(share, abs=0.0005)
    assert limits_of(30, at, method=method).half_width_pd == pytest.approx(error.interval(0.95)[1], abs=0.06)
    assert limits_of(30, at, method=method).provenance.mark is Mark.COMPUTED


def test_the_difference_of_unlike_readings_has_the_root_of_the_sum_of_squares():
    """sqrt(7.3^2 + 8.3^2) = 11.05 by hand."""
    assert difference_limits_pd(limits_of(40, DISTANCE), limits_of(52, NEAR)) == pytest.approx(11.05, abs=0.06)


@given(st.floats(-150, 150), st.sampled_from(Range), st.sampled_from(Method), st.sampled_from(Direction))
def test_the_mirrored_deviation_has_the_same_error(value_pd, at, method, direction):
    one = limits_of(value_pd, at, method=method, direction=direction)
    mirrored = limits_of(-value_pd, at, method=method, direction=direction)

    assert (one.half_width_pd, one.difference_pd) == (mirrored.half_width_pd, mirrored.difference_pd)


@given(st.floats(0, 150), st.floats(0, 50), st.sampled_from(Range))
def test_a_larger_deviation_is_never_measured_more_exactly(value_pd, more_pd, at):
    assert limits_of(value_pd + more_pd, at).half_width_pd >= limits_of(value_pd, at).half_width_pd
