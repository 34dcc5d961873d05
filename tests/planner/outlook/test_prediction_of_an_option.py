"""What a proposal predicts of its options, from the case to the chances."""

from dataclasses import replace
from math import fsum, sqrt

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from scipy.stats import norm

from planner.codec import write
from planner.prediction import SPREADS
from planner.proposal import propose
from planner.provenance import Mark
from planner.records.case import Aim
from planner.records.technique import Condition, Method
from planner.values.option import Answers, Operation
from tests.planner.patients import case, change, codes, options, reading
from tests.planner.strategies import cases

MANY = settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])

# 95 % limits of a reading: Holmes et al. 2009 (Arch Ophthalmol 127:59-65)
# spread of the effect per mm: Lai et al. 2025, one eye in exotropia; Bayramlar et al., three muscles in esotropia
ADULT_XT, CHILD_XT, THREE_ET = 0.62, 0.60, 0.62

END_TO_END = [
    # id, target, born, option, limits at distance, spread in Δ per mm and mm in all (None: in Δ as it stands)
    pytest.param(30, None, "recess-both-mr", 7.3, (THREE_ET, 9.0), id="et-30-both-mr-borrowed-bayramlar"),
    pytest.param(-20, None, "recess-lr-resect-mr-left", 4.1, (ADULT_XT, 9.0), id="xt-20-one-eye-lai-adult"),
    pytest.param(-30, "2019-01-01", "recess-lr-resect-mr-right", 7.3, (CHILD_XT, 11.5), id="xt-30-one-eye-lai-child"),
    pytest.param(50, None, "recess-both-mr", 7.3, (THREE_ET, 12.0), id="et-50-both-mr-borrowed-bayramlar"),
]


@pytest.mark.check_value
@pytest.mark.parametrize(("angle_pd", "born_on", "option_id", "limits_pd", "spread"), END_TO_END)
def test_a_proposal_predicts_what_scipy_says_of_the_published_figures(angle_pd, born_on, option_id, limits_pd, spread):
    option = options(angle_pd, born_on=born_on)[option_id]
    per_mm, in_all_mm = spread
    oracle = norm(loc=option.expected_residual_pd, scale=sqrt((limits_pd / 1.96) ** 2 + (per_mm * in_all_mm) ** 2))
    low, high = oracle.interval(0.95)
    eso, exo = 100 * oracle.sf(10), 100 * oracle.cdf(-10)
    at = option.prediction.distance

    assert fsum(dose.mm for dose in option.doses) == in_all_mm
    assert at.mean_pd == option.expected_residual_pd
    assert (at.low_pd, at.high_pd) == (pytest.approx(low, abs=0.06), pytest.approx(high, abs=0.06))
    assert (at.undercorrected_percent, at.overcorrected_percent) == (
        pytest.approx(eso if angle_pd > 0 else exo, abs=0.06),
        pytest.approx(exo if angle_pd > 0 else eso, abs=0.06),
    )
    assert at.within_percent == pytest.approx(100 - eso - exo, abs=0.11)


def test_a_seeded_simulation_of_patients_ends_where_the_proposal_says():
    """200,000 patients read as 40 Δ at distance, 46 Δ near and 30 Δ in up-gaze; one operation each, one effect each."""
    option = options(40, reading(46, at="near"), reading(30, gaze="up"))["recess-both-mr"]
    generator = np.random.default_rng(20_261_125)
    effect = generator.normal(40 - option.expected_residual_pd, THREE_ET * 11.0, 200_000)
    (up,) = option.prediction.gazes

    for at, limits_pd in ((option.prediction.distance, 7.3), (option.prediction.near, 8.3), (up, 7.3)):
        residual = generator.normal(at.before_pd, limits_pd / 1.96, 200_000) - effect
        assert np.mean(residual) == pytest.approx(at.mean_pd, abs=0.1)
        assert np.percentile(residual, [2.5, 97.5]) == pytest.approx([at.low_pd, at.high_pd], abs=0.25)
        assert 100 * np.mean(np.abs(residual) <= 10) == pytest.approx(at.within_percent, abs=0.6)
        assert 100 * np.mean(residual > 10) == pytest.approx(at.undercorrected_percent, abs=0.6)
        assert 100 * np.mean(residual < -10) == pytest.approx(at.overcorrected_percent, abs=0.6)


def test_a_published_spread_and_a_borrowed_one_are_told_apart():
    found = options(-30, born_on="1990-01-01")
    own, borrowed = found["recess-lr-resect-mr-left"].prediction, found["recess-both-lr"].prediction

    assert (own.spread.code, own.spread.provenance.mark) == ("spread_published", Mark.PUBLISHED)
    assert (borrowed.spread.code, borrowed.spread.provenance.mark) == ("spread_borrowed", Mark.HOUSE_RULE)
    assert "No spread is published" in borrowed.spread.text


def test_what_is_assumed_elsewhere_is_said_as_an_assumption():
    prediction = options(40, reading(44, at="near"))["recess-both-mr"].prediction
    assumed = next(step for step in prediction.steps if step.code == "same_correction_assumed")

    assert assumed.provenance.mark is Mark.HOUSE_RULE
    assert "same_correction_assumed" not in codes(options(40)["recess-both-mr"].prediction.steps)


def test_the_surgeons_change_moves_the_prediction():
    by_table = options(40)["recess-both-mr"]
    less = options(40, changes=[change("recess-both-mr", "right", "MR", 4.0)])["recess-both-mr"]

    assert less.prediction.distance.mean_pd == less.expected_residual_pd > by_table.expected_residual_pd
    assert less.prediction.distance.undercorrected_percent > by_table.prediction.distance.undercorrected_percent


def test_a_reading_of_lower_precision_widens_the_prediction():
    case_ = case(30)
    (target,) = case_.examination.readings
    rough = replace(case_, examination=replace(case_.examination, readings=(replace(target, method=Method.KRIMSKY),)))
    exact, wide = (next(iter(propose(each).options)).prediction.distance for each in (case_, rough))

    assert wide.high_pd - wide.low_pd > exact.high_pd - exact.low_pd


def test_an_overcorrected_gaze_counts_as_overcorrected_whatever_its_own_direction():
    """In down-gaze the eyes are straight before an operation for 40 Δ eso: they end exo."""
    (down,) = options(40, reading(0, gaze="down"))["recess-both-mr"].prediction.gazes

    assert down.mean_pd == -40
    assert down.overcorrected_percent > 99
    assert down.undercorrected_percent == 0


def test_what_was_measured_otherwise_than_the_target_is_left_out_and_said():
    patched = replace(reading(50), condition=Condition.AFTER_PATCHING)
    found = options(40, patched, reading(44, at="near"), reading(30, correction="without"), aim="after patching")
    prediction = next(option for option in found.values() if option.doses).prediction

    assert prediction.distance.before_pd == 50
    assert prediction.near is None
    assert "other_readings_not_used" in codes(prediction.steps)


def test_more_recession_for_near_is_not_counted_and_said():
    prediction = options(30, reading(45, at="near"))["recess-both-mr"].prediction

    assert prediction.near.mean_pd == 15 + prediction.distance.mean_pd
    assert "addition_not_counted" in codes(prediction.steps)


def test_no_dose_means_no_prediction():
    found = options(150)

    assert {option.prediction is None for option in found.values() if not option.doses} == {True}


V_EXOTROPIA = (reading(-40, gaze="up"), reading(-18, gaze="down"), reading(-30, gaze="right"))


def test_a_moved_tendon_takes_half_of_the_published_collapse_from_either_gaze():
    """J Pediatr Ophthalmol Strabismus 2019;56:107-15: half a width, both lateral recti, 13.1 ± 3.8 Δ."""
    alone = case(-30, *V_EXOTROPIA)
    both = replace(alone, combine=("recess-both-lr", "offset-both-lr"))
    before, after = (_by_gaze(option.prediction) for option in (_of(alone, "recess-both-lr"), propose(both).combined))

    assert after["up"].mean_pd == pytest.approx(before["up"].mean_pd + 13.1 / 2, abs=0.1)
    assert after["down"].mean_pd == pytest.approx(before["down"].mean_pd - 13.1 / 2, abs=0.1)
    assert after["right"] == before["right"]
    assert after["up"].sd_pd == pytest.approx(sqrt(before["up"].sd_pd ** 2 + (3.8 / 2) ** 2), abs=0.1)
    assert "pattern_change_halved" in codes(propose(both).combined.prediction.steps)
    assert SPREADS["offset-half"].mean == 13.1


def test_a_combination_predicts_horizontally_what_its_horizontal_part_does():
    a_case = case(30, vertical_pd=12)
    vertical = next(each for each in propose(a_case).additions if each.answers is Answers.VERTICAL)
    combined = propose(replace(a_case, combine=("recess-both-mr", vertical.id))).combined

    assert combined.prediction.distance == _of(a_case, "recess-both-mr").prediction.distance
    assert vertical.prediction is None


def _of(a_case, id_):
    return next(option for option in propose(a_case).options if option.id == id_)


def _by_gaze(prediction):
    return {outcome.gaze.value: outcome for outcome in prediction.gazes}


def _outcomes(prediction):
    return [each for each in (prediction.distance, prediction.near, *prediction.gazes) if each]


@MANY
@given(cases())
def test_every_prediction_is_a_whole_with_a_source_for_every_sentence(a_case):
    proposal = propose(a_case)
    target = proposal.target
    for option in proposal.all_options:
        horizontal = [dose for dose in option.doses if dose.operation in (Operation.RECESS, Operation.RESECT)]
        if option.answers is Answers.HORIZONTAL:
            assert (option.prediction is None) is (not horizontal)
        if option.prediction is None:
            continue
        aimed = option.prediction.near if target.reading.range == "near" else option.prediction.distance
        assert aimed.mean_pd == pytest.approx(option.expected_residual_pd, abs=1e-9)
        assert all(step.provenance.source for step in (option.prediction.spread, *option.prediction.steps))
        for each in _outcomes(option.prediction):
            chances = (each.within_percent, each.undercorrected_percent, each.overcorrected_percent)
            assert fsum(chances) == pytest.approx(100, abs=0.05)
            assert min(chances) >= 0
            assert each.low_pd <= each.mean_pd <= each.high_pd


@MANY
@given(cases(), st.sampled_from(Method))
def test_larger_measurement_error_never_narrows_an_interval(a_case, method):
    """The same single reading, taken by a rougher method."""
    (target, *_), examination = a_case.examination.readings, a_case.examination
    bare = replace(examination, readings=(replace(target, technique=None),), spectacles_right_d=None)
    one = replace(a_case, examination=bare, aim=Aim.DISTANCE)
    rough = replace(one, examination=replace(bare, readings=(replace(bare.readings[0], method=method),)))
    for exact, wide in zip(*(_by_id(each) for each in (one, rough)), strict=True):
        assert exact[0] == wide[0]
        assert wide[1].high_pd - wide[1].low_pd >= exact[1].high_pd - exact[1].low_pd


def _by_id(a_case):
    found = {option.id: option.prediction for option in propose(a_case).options if option.prediction}
    return [(id_, found[id_].distance) for id_ in sorted(found)]


@MANY
@given(cases())
def test_every_figure_of_a_prediction_is_a_tenth(a_case):
    """So that two mathematics libraries that differ in the last place write the same bytes."""
    for option in propose(a_case).options:
        for each in _outcomes(option.prediction) if option.prediction else ():
            told = {name: figure for name, figure in write(each).items() if name.endswith(("_pd", "_percent"))}
            for name in told.keys() - {"before_pd"}:
                assert round(told[name], 1) == told[name], name
