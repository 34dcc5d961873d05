"""The same figures from SciPy 1.17, to twelve digits where both are exact; and printed intervals.

There is no row for a chi-square (22 of 24 v 20 of 31, Saleem et al., BMC Res Notes 2013;6:257): groups stand side by
side with their intervals and are never tested against each other, for nothing is adjusted for the case mix.
"""

import warnings

import numpy as np
import pytest
from scipy import stats

from planner.statistics import (
    Followed,
    Vigil,
    kaplan_meier,
    proportion,
    run_lengths,
    student_quantile,
    summary,
    watch,
)
from planner.statistics.beta import beta_quantile, incomplete_beta

pytestmark = pytest.mark.check_value

SHAPES = [(0.5, 0.5), (1, 1), (2, 5), (30, 4), (0.3, 40), (700, 300), (1.5, 1200)]


@pytest.mark.parametrize(("a", "b"), SHAPES)
@pytest.mark.parametrize("x", [1e-6, 0.01, 0.2, 0.5, 0.77, 0.999])
def test_the_incomplete_beta_function(x, a, b):
    assert incomplete_beta(x, a, b) == pytest.approx(stats.beta.cdf(x, a, b), rel=1e-10, abs=1e-14)


@pytest.mark.parametrize(("a", "b"), SHAPES)
@pytest.mark.parametrize("probability", [0.001, 0.025, 0.5, 0.975])
def test_its_inverse(probability, a, b):
    assert beta_quantile(probability, a, b) == pytest.approx(stats.beta.ppf(probability, a, b), rel=1e-9)


@pytest.mark.parametrize("freedom", [1, 2.5, 7, 30, 400])
@pytest.mark.parametrize("probability", [0.005, 0.025, 0.3, 0.5, 0.8, 0.975])
def test_student_s_t(probability, freedom):
    expected = stats.t.ppf(probability, freedom)

    assert student_quantile(probability, freedom) == pytest.approx(expected, rel=1e-8, abs=1e-7)


@pytest.mark.parametrize(
    ("count", "cases"), [(0, 1), (0, 20), (1, 20), (2, 87), (35, 50), (22, 24), (20, 31), (50, 50), (4000, 10000)]
)
def test_exact_intervals(count, cases):
    expected = stats.binomtest(count, cases).proportion_ci(method="exact")
    ours = proportion(count, cases)

    assert (ours.low, ours.high) == pytest.approx((expected.low, expected.high), rel=1e-9, abs=1e-12)


@pytest.mark.parametrize(
    ("count", "cases", "low", "high"),
    [
        (2, 87, 0.3, 8.1),  # anterior segment ischaemia, Strabismus 2018, as printed
        (35, 50, 55.4, 82.1),  # from Manchandia and Demer, J AAPOS 2014;18:567-71
        (42, 55, 63.0, 86.8),  # from the counts of Saleem et al., BMC Res Notes 2013;6:257
        (27, 31, 70.2, 96.4),  # from counts alone, their source not known
    ],
)
def test_printed_intervals(count, cases, low, high):
    ours = proportion(count, cases)

    assert (round(100 * ours.low, 1), round(100 * ours.high, 1)) == (low, high)


@pytest.mark.parametrize("seed", range(6))
def test_kaplan_meier(seed):
    dice = np.random.default_rng(seed)
    people = [Followed(days=int(dice.integers(1, 60)), failed=dice.random() < 0.5) for _ in range(5 + 12 * seed)]
    times = [person.days for person in people]
    data = stats.CensoredData.right_censored(times, [not person.failed for person in people])
    expected = stats.ecdf(data).sf
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", RuntimeWarning)  # no interval where the share is 0 or 1
        interval = expected.confidence_interval(method="log-log")

    steps = kaplan_meier(people)

    assert steps
    for step in steps:
        assert step.share == pytest.approx(expected.evaluate(step.days), rel=1e-12)
        if step.low is not None:
            assert step.low == pytest.approx(interval.low.evaluate(step.days), rel=1e-9)
            assert step.high == pytest.approx(interval.high.evaluate(step.days), rel=1e-9)


@pytest.mark.parametrize("seed", range(4))
def test_quartiles(seed):
    figures = [np.random.default_rng((seed, place)).normal(2, 5) for place in range(3 + 7 * seed)]
    ours = summary(figures)

    assert ours.sd == pytest.approx(stats.tstd(figures))
    assert (ours.lower_quartile, ours.median, ours.upper_quartile) == pytest.approx(
        tuple(np.quantile(figures, (0.25, 0.5, 0.75)))
    )


@pytest.mark.parametrize(("expected", "worse", "limit"), [(0.2, 0.4, 2.0), (0.1, 0.2, 3.0), (0.3, 0.5, 2.5)])
@pytest.mark.parametrize("truth", ["expected", "worse"])
def test_run_lengths_are_those_of_simulated_cases(expected, worse, limit, truth):
    """Not SciPy's: 3,000 runs thrown with a fixed seed, four standard errors and 3 % for the states' width."""
    vigil = Vigil(expected=expected, worse=worse, limit=limit)
    dice = np.random.default_rng(7)
    share = getattr(vigil, truth)
    runs = []
    for _ in range(3000):
        level, cases = 0.0, 0
        while level < limit:
            level = max(0.0, level + vigil.weight(failed=dice.random() < share))
            cases += 1
        runs.append(cases)
    mean, error = stats.tmean(runs), stats.sem(runs)
    lengths = run_lengths(vigil)
    ours = lengths.false_call_cases if truth == "expected" else lengths.true_call_cases

    assert ours == pytest.approx(mean, abs=4 * error + 0.03 * mean)


def test_a_watch_begins_anew_after_its_call():
    vigil = Vigil(expected=0.2, worse=0.4, limit=1.0)

    levels = watch(vigil, [True, True, False, True])

    assert levels == pytest.approx((0.6931, 1.3863, 0.0, 0.6931), abs=1e-4)


def test_a_printed_product_limit_estimate():
    """Weeks of remission under 6-mercaptopurine: Freireich et al., Blood 1963;21:699-716, as textbooks print it."""
    lost = [6, 6, 6, 7, 10, 13, 16, 22, 23]
    last_seen = [6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35]
    people = [Followed(days=weeks, failed=True) for weeks in lost] + [
        Followed(days=weeks, failed=False) for weeks in last_seen
    ]
    steps = kaplan_meier(people)

    assert [(step.days, step.at_risk) for step in steps] == [
        (6, 21), (7, 17), (10, 15), (13, 12), (16, 11), (22, 7), (23, 6),
    ]  # fmt: skip
    printed = [0.857, 0.807, 0.753, 0.690, 0.627, 0.538, 0.448]
    assert [step.share for step in steps] == pytest.approx(printed, abs=0.0005)


@pytest.mark.parametrize(("expected", "worse"), [(0.2, 0.4), (0.05, 0.5)])
def test_a_watch_that_calls_at_the_first_failure_waits_as_a_geometric_wait_does(expected, worse):
    """Exact: where one failure reaches the limit, the mean wait is 1 / share."""
    lengths = run_lengths(Vigil(expected=expected, worse=worse, limit=np.log(worse / expected) * 0.9))

    assert (lengths.false_call_cases, lengths.true_call_cases) == pytest.approx((1 / expected, 1 / worse), rel=1e-9)
