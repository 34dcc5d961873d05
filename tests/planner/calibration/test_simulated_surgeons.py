"""Surgeons whose true effect is known: what is learned finds it, stays at the table, or barely moves."""

import numpy as np
import pytest
from scipy import stats

from planner.calibration.admission import Confounder, PastCase, Question, Window
from planner.calibration.calibrating import ENOUGH_CASES, calibrate
from planner.calibration.posterior import LEAST_EFFECT, MOST_EFFECT, learn
from planner.calibration.prior import prior

FAMILY = "recess-lr-resect-mr"


def cases(effect, count, *, seed=1, sd=0.2):
    dice = np.random.default_rng(seed)
    promised = dice.uniform(15, 50, count)
    ratios = dice.normal(effect, sd, count)
    return tuple(
        PastCase(
            id=f"00000000-0000-7000-8000-{place:012x}",
            promised_pd=float(size),
            achieved_pd=float(size * ratio),
            days_after=60,
        )
        for place, (size, ratio) in enumerate(zip(promised, ratios, strict=True))
    )


def answer(known, **more):
    return calibrate(Question(family=FAMILY, cases=known, **more))


@pytest.mark.parametrize("effect", [0.85, 0.9, 1.1, 1.2])
def test_with_a_true_effect_it_converges(effect):
    distances = [abs(answer(cases(effect, count)).effect.middle - effect) for count in (20, 200, 4000)]

    assert distances[0] > distances[2]
    assert distances[2] < 0.01


@pytest.mark.parametrize("seed", range(5))
def test_without_an_effect_it_stays_at_the_table(seed):
    assert answer(cases(1.0, 200, seed=seed)).effect.middle == pytest.approx(1, abs=0.04)


@pytest.mark.parametrize("effect", [0.7, 1.3])
def test_with_five_cases_it_barely_moves_and_suggests_nothing(effect):
    said = answer(cases(effect, 5))

    assert abs(said.effect.middle - 1) <= 0.2 * abs(effect - 1) + 0.04
    assert said.look_up_factor is None
    assert "calibration_too_few" in {statement.code for statement in said.statements}


def test_the_next_case_lies_in_its_interval_in_95_of_100():
    """2,000 surgeons drawn from the prior itself, each with 15 cases and a sixteenth: the share is exact in theory."""
    before = prior(FAMILY)
    dice = np.random.default_rng(11)
    variances = stats.invgamma.rvs(before.shape, scale=before.scale, size=2000, random_state=dice)
    inside = 0
    for variance in variances:
        effect = dice.normal(before.mean, np.sqrt(variance / before.weight))
        ratios = dice.normal(effect, np.sqrt(variance), 16)
        told = learn(before, list(ratios[:15])).next_case()
        inside += told.low <= ratios[15] <= told.high

    assert 0.93 <= inside / 2000 <= 0.97


@pytest.mark.check_value
def test_the_predictive_distribution_is_student_s_t():
    """Quadrature with SciPy over the posterior of the variance, instead of the closed form."""
    learned = learn(prior(FAMILY), [1.1, 0.9, 1.3, 1.05])
    variance = stats.invgamma(learned.shape, scale=learned.scale)
    shares = (np.arange(20000) + 0.5) / 20000
    widths = np.sqrt(variance.ppf(shares) * (learned.weight + 1) / learned.weight)
    told = learned.next_case()

    assert stats.norm.cdf((told.high - learned.mean) / widths).mean() == pytest.approx(0.975, abs=2e-4)


def test_the_order_of_the_cases_does_not_matter():
    known = cases(1.1, 30)

    assert answer(known).effect.middle == pytest.approx(answer(known[::-1]).effect.middle, rel=1e-12)


def test_one_wild_case_moves_little_and_is_told():
    known = cases(1.0, 30)
    wild = PastCase(id="00000000-0000-7000-8000-0000000000ff", promised_pd=20, achieved_pd=-100, days_after=60)
    said = answer((*known, wild))

    assert said.effect.middle == pytest.approx(answer(known).effect.middle, abs=0.02)
    assert "calibration_outliers" in {statement.code for statement in said.statements}


@pytest.mark.parametrize(("effect", "bound"), [(0.4, LEAST_EFFECT), (1.6, MOST_EFFECT)])
def test_it_never_goes_beyond_its_bounds(effect, bound):
    said = answer(cases(effect, 3000))

    assert said.look_up_factor == pytest.approx(1 / bound)
    assert "calibration_bounded" in {statement.code for statement in said.statements}


def test_cases_outside_the_window_or_confounded_teach_nothing_and_are_counted():
    known = cases(1.0, 12)
    late = PastCase(id="00000000-0000-7000-8000-0000000000fe", promised_pd=20, achieved_pd=5, days_after=900)
    moved = PastCase(
        id="00000000-0000-7000-8000-0000000000fd",
        promised_pd=20,
        achieved_pd=5,
        days_after=60,
        confounders=(Confounder.ADJUSTED,),
    )
    said = answer((*known, late, moved), window=Window(first_days=30, last_days=90))

    assert said.effect == answer(known, window=Window(first_days=30, last_days=90)).effect
    reasons = [statement.facts["cases"] for statement in said.statements if statement.code == "case_left_out"]
    assert reasons == [1, 1]


def test_a_past_case_is_told_without_itself():
    known = cases(1.1, ENOUGH_CASES)
    told = answer(known).past.told[3]
    others = answer(known[:3] + known[4:])

    assert told.own_pd == pytest.approx(known[3].promised_pd * others.effect.middle)


def test_one_s_own_effect_misses_less_than_the_table_when_there_is_one():
    past = answer(cases(0.85, 100)).past

    assert past.own_missed_pd < past.table_missed_pd
