"""The expected residual deviation, against scipy.stats, a seeded simulation and a published model."""

import math

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.stats import norm

from planner.precision import Method, limits_of
from planner.prediction import SPREADS, Expectation, dose_response, predict
from planner.records.examination import Range


def expectation(reading_pd, correction_pd, spread_pd, method=Method.PRISM_COVER):
    return Expectation(
        reading_pd=reading_pd,
        limits=limits_of(reading_pd, Range.DISTANCE, method=method),
        correction_pd=correction_pd,
        spread_pd=spread_pd,
    )


CASES = [
    pytest.param(30, 30, 5.58, id="scipy-et-30-both-mr"),
    pytest.param(50, 45, 8.0, id="scipy-et-50-short-by-5"),
    pytest.param(-35, -35, 7.75, id="scipy-xt-35-one-eye"),
    pytest.param(-35, -40, 7.75, id="scipy-xt-35-aimed-over-by-5"),
    pytest.param(15, 16, 1.98, id="scipy-et-15-one-mr"),
    pytest.param(80, 60, 12.0, id="scipy-et-80-short-by-20"),
    pytest.param(18, 0, None, id="scipy-no-operation"),
]


@pytest.mark.check_value
@pytest.mark.parametrize(("reading_pd", "correction_pd", "spread_pd"), CASES)
def test_the_distribution_is_scipys(reading_pd, correction_pd, spread_pd):
    prediction = predict(expectation(reading_pd, correction_pd, spread_pd))
    sd = math.hypot(limits_of(reading_pd, Range.DISTANCE).sd_pd, spread_pd or 0)
    oracle = norm(loc=reading_pd - correction_pd, scale=sd)
    low, high = oracle.interval(0.95)
    eso, exo = 100 * oracle.sf(10), 100 * oracle.cdf(-10)
    under, over = (eso, exo) if reading_pd > 0 else (exo, eso)

    assert prediction.mean_pd == reading_pd - correction_pd
    assert (prediction.low_pd, prediction.high_pd) == (pytest.approx(low, abs=0.06), pytest.approx(high, abs=0.06))
    assert prediction.undercorrected_percent == pytest.approx(under, abs=0.051)
    assert prediction.overcorrected_percent == pytest.approx(over, abs=0.051)
    assert prediction.within_percent == pytest.approx(100 - under - over, abs=0.11)


@pytest.mark.check_value
@pytest.mark.parametrize(("reading_pd", "correction_pd", "spread_pd"), CASES)
def test_a_seeded_simulation_of_patients_comes_out_alike(reading_pd, correction_pd, spread_pd):
    """200,000 patients: true angle around the reading, true effect around the expected; standard error 0.11 %."""
    generator = np.random.default_rng(20_261_125)
    count = 200_000
    true_angle = generator.normal(reading_pd, limits_of(reading_pd, Range.DISTANCE).sd_pd, count)
    true_effect = generator.normal(correction_pd, spread_pd or 0, count)
    residual = true_angle - true_effect
    prediction = predict(expectation(reading_pd, correction_pd, spread_pd))

    assert 100 * np.mean(np.abs(residual) <= 10) == pytest.approx(prediction.within_percent, abs=0.6)
    assert np.percentile(residual, 2.5) == pytest.approx(prediction.low_pd, abs=0.25)
    assert np.percentile(residual, 97.5) == pytest.approx(prediction.high_pd, abs=0.25)


BOTH_MR_ROWS = [
    pytest.param(deviation_pd, mm, id=f"both-mr-row-{deviation_pd}")
    for deviation_pd, mm in ((25, 4.0), (30, 4.5), (35, 5.0), (40, 5.5), (50, 6.0), (60, 6.5))
]


@pytest.mark.check_value
@pytest.mark.parametrize(("deviation_pd", "mm"), BOTH_MR_ROWS)
def test_both_mr_recession_succeeds_as_often_as_a_published_model_says(deviation_pd, mm):
    """Arch Ophthalmol 1986;104:1780-2: 72 to 96 % over fifteen sets of assumed errors, measured and surgical.

    Ours: Holmes' limits for the reading, Bayramlar's spread by the millimetre, Wright's rows for the millimetres.
    """
    spread_pd = SPREADS["et-three-muscles"].sd_pd(2 * mm)
    within = predict(expectation(deviation_pd, deviation_pd, spread_pd)).within_percent

    assert 72 <= within <= 96


def test_the_published_range_needs_a_total_error_of_4_9_to_9_3():
    """scipy.stats: which SD puts 96 % and 72 % within 10 Δ, and that ours answers the same."""
    for percent in (96, 72):
        total = 10 / norm.ppf(0.5 + percent / 200)
        reading_sd = limits_of(40, Range.DISTANCE).sd_pd
        prediction = predict(expectation(40, 40, math.sqrt(total**2 - reading_sd**2)))

        assert prediction.within_percent == pytest.approx(percent, abs=0.1)
        assert 4.8 < total < 9.3


def test_without_a_published_spread_it_says_that_the_interval_is_too_narrow():
    assert dose_response(None).code == "spread_unknown"
    assert dose_response(5.58).facts == {"sd_pd": 5.6}


def test_a_reading_by_light_reflex_widens_the_interval():
    cover, reflex = (predict(expectation(30, 30, 5, method)) for method in (Method.PRISM_COVER, Method.HIRSCHBERG))

    assert reflex.high_pd - reflex.low_pd > cover.high_pd - cover.low_pd
    assert reflex.within_percent < cover.within_percent


READINGS = st.integers(1, 100)
CORRECTIONS = st.integers(0, 120)
SPREADS_PD = st.none() | st.floats(0.1, 20)


@given(READINGS, CORRECTIONS, SPREADS_PD)
def test_the_mirrored_patient_has_the_mirrored_outcome(reading_pd, correction_pd, spread_pd):
    one = predict(expectation(reading_pd, correction_pd, spread_pd))
    mirrored = predict(expectation(-reading_pd, -correction_pd, spread_pd))

    assert mirrored.mean_pd == -one.mean_pd
    assert (mirrored.low_pd, mirrored.high_pd) == (-one.high_pd, -one.low_pd)
    assert mirrored.within_percent == one.within_percent
    assert mirrored.undercorrected_percent == one.undercorrected_percent
    assert mirrored.overcorrected_percent == one.overcorrected_percent


@given(READINGS, CORRECTIONS, SPREADS_PD)
def test_the_three_chances_make_a_whole(reading_pd, correction_pd, spread_pd):
    prediction = predict(expectation(reading_pd, correction_pd, spread_pd))
    chances = (prediction.within_percent, prediction.undercorrected_percent, prediction.overcorrected_percent)

    assert sum(chances) == pytest.approx(100, abs=1e-9)
    assert all(0 <= chance <= 100 for chance in chances)


@given(READINGS, CORRECTIONS, st.integers(1, 30), SPREADS_PD)
def test_more_correction_never_means_more_undercorrection(reading_pd, correction_pd, more_pd, spread_pd):
    less, more = (
        predict(expectation(reading_pd, each, spread_pd)) for each in (correction_pd, correction_pd + more_pd)
    )

    assert more.undercorrected_percent <= less.undercorrected_percent
    assert more.overcorrected_percent >= less.overcorrected_percent


@given(READINGS, st.floats(0.1, 15), st.floats(0.1, 10))
def test_more_scatter_never_means_more_success_when_the_aim_is_straight(reading_pd, spread_pd, more_pd):
    narrow, wide = (predict(expectation(reading_pd, reading_pd, each)) for each in (spread_pd, spread_pd + more_pd))

    assert wide.within_percent <= narrow.within_percent


@given(READINGS, CORRECTIONS, SPREADS_PD, st.floats(1, 10), st.floats(0.1, 10))
def test_a_wider_goal_is_never_harder_to_reach(reading_pd, correction_pd, spread_pd, within_pd, more_pd):
    assume(spread_pd is None or spread_pd > 0)
    given_ = expectation(reading_pd, correction_pd, spread_pd)

    assert predict(given_, within_pd + more_pd).within_percent >= predict(given_, within_pd).within_percent - 0.11
