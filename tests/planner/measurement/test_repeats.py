"""Several readings of the same thing: which one counts, and when they disagree beyond measurement error."""

import pytest

from planner.records.examination import Correction, Gaze, Range
from tests.planner.examined import aimed, measured, straight

HOW = (Gaze.PRIMARY, Range.DISTANCE, Correction.WITH)


def repeats(*figures, at="distance", **how):
    return [straight(figure, at=at, repeat=place, **how) for place, figure in enumerate(figures, start=1)]


@pytest.mark.parametrize(
    ("figures", "counts"),
    [([40], 40), ([38, 45, 40], 40), ([40, 35], 35), ([-40, -35], -35), ([10, 20, 25, 18], 18), ([30, 30, 45], 30)],
)
def test_the_middle_reading_counts_and_of_two_the_one_nearer_zero(figures, counts):
    assert measured(*repeats(*figures)).horizontal(*HOW).value_pd == counts


def test_the_more_exact_method_counts():
    readings = (straight(50, method="prism reflex"), straight(60, method="light reflex"), straight(42))
    figure = measured(*readings).horizontal(*HOW)

    assert (figure.value_pd, figure.repeats) == (42, 3)
    assert "the most exact method used" in figure.steps[-1].text


def test_readings_are_compared_as_corrected():
    """40 Δ of glass held frontal act as 32 Δ (Thompson & Guyton 1983), so 32 and 33 are the middle ones."""
    glass = straight(40, technique={"material": "glass", "held": "frontal"})
    figure = measured(glass, straight(33, repeat=2), straight(31, repeat=3)).horizontal(*HOW)

    assert (figure.value_pd, figure.raw_pd) == (32.3, 40)


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("figures", "at", "disagree"),
    [
        # limits of a difference, Holmes et al., Arch Ophthalmol 2009;127:59-65
        pytest.param((30, 40.4), "distance", False, id="10.4-distance-above-20"),
        pytest.param((30, 40.5), "distance", True, id="10.5-distance-above-20"),
        pytest.param((30, 41.7), "near", False, id="11.7-near-above-20"),
        pytest.param((30, 41.8), "near", True, id="11.8-near-above-20"),
        pytest.param((12, 17.8), "distance", False, id="5.8-distance-to-20"),
        pytest.param((12, 17.9), "distance", True, id="5.9-distance-to-20"),
        pytest.param((12, 16.7), "near", False, id="4.7-near-to-20"),
        pytest.param((12, 16.8), "near", True, id="4.8-near-to-20"),
    ],
)
def test_readings_disagree_beyond_the_limits_of_a_difference(figures, at, disagree):
    figure = measured(*repeats(*figures, at=at)).horizontal(Gaze.PRIMARY, Range(at), Correction.WITH)

    assert ("readings_disagree" in [notice.code for notice in figure.notices]) == disagree


def test_a_target_of_readings_that_disagree_carries_the_caution():
    target = aimed(*repeats(30, 45))

    assert [(notice.code, notice.level) for notice in target.notices] == [("readings_disagree", "caution")]
    assert target.agreement.spread_pd == 15


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("figure", "how", "limits"),
    [
        # Holmes et al. 2009, one reading
        pytest.param(25, {}, 7.3, id="distance-above-20"),
        pytest.param(15, {}, 4.1, id="distance-to-20"),
        pytest.param(-25, {}, 7.3, id="exo-alike"),
        # PMID 34851974: 70.0 % and 54.5 % within 10 Δ at distance, errors taken as normal
        pytest.param(25, {"method": "prism reflex"}, 18.9, id="prism-reflex-distance"),
        pytest.param(25, {"method": "light reflex"}, 26.2, id="light-reflex-distance"),
    ],
)
def test_the_error_of_the_reading_travels_with_the_target(figure, how, limits):
    target = aimed(straight(figure, **how))

    assert target.limits_pd == pytest.approx(limits, abs=0.05)
    assert target.steps[1].facts["limits_pd"] == target.limits_pd
