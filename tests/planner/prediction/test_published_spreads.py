"""The published scatter of dose-responses is carried over as printed."""

import pytest
from scipy.integrate import quad
from scipy.stats import norm

from planner.prediction import SPREADS, SpreadUnit
from planner.prediction.spread import RANGE_OF_53_SD
from planner.provenance import Mark

PER_MM = [
    pytest.param("xt-one-eye-child", 2.82, 0.60, id="lai-2025-children"),
    pytest.param("xt-one-eye-adult", 3.02, 0.62, id="lai-2025-adults"),
    pytest.param("et-three-muscles", 3.32, 0.62, id="bayramlar-three-muscles"),
    pytest.param("vertical-rectus-recess-early", 3.10, 1.52, id="bae-choi-2012-early"),
    pytest.param("vertical-rectus-recess", 2.94, 1.64, id="bae-choi-2012-late"),
    pytest.param("dvd-sr-recess", 1.82, 1.51, id="bae-choi-2012-dvd"),
]
WHOLE = [
    pytest.param("single-mr-recess-5.0", 17.33, 1.16, id="pmid-20795601-5.0-mm"),
    pytest.param("single-mr-recess-5.5", 18.57, 2.51, id="pmid-20795601-5.5-mm"),
    pytest.param("single-mr-recess-6.0", 23.67, 4.91, id="pmid-20795601-6.0-mm"),
    pytest.param("single-mr-recess-6.5", 26.68, 3.87, id="pmid-20795601-6.5-mm"),
    pytest.param("single-mr-recess-7.0", 31.93, 3.26, id="pmid-20795601-7.0-mm"),
    pytest.param("io-transpose-2-behind", 9.5, 0.9, id="can-j-ophthalmol-2022-2-behind"),
    pytest.param("io-transpose-1-behind", 12.4, 1.5, id="can-j-ophthalmol-2022-1-behind"),
    pytest.param("io-transpose-level", 16.7, 1.4, id="can-j-ophthalmol-2022-level"),
    pytest.param("io-transpose-1-ahead", 19.6, 1.7, id="can-j-ophthalmol-2022-1-ahead"),
    pytest.param("io-transpose-2-ahead", 22.6, 5.8, id="can-j-ophthalmol-2022-2-ahead"),
    pytest.param("offset-half", 13.1, 3.8, id="jpos-2019-half-width"),
    pytest.param("offset-full", 35.6, 13.7, id="jpos-2019-full-width"),
    pytest.param("offset-one-eye", 13.8, 7.9, id="jpos-2019-one-eye"),
    pytest.param("a-sr-and-so", 17, 3, id="velez-2009-sr-and-so"),
    pytest.param("a-sr-alone", 7, 2, id="velez-2009-sr-alone"),
]


@pytest.mark.check_value
@pytest.mark.parametrize(("id_", "mean", "sd"), PER_MM)
def test_figures_by_the_millimetre(id_, mean, sd):
    spread = SPREADS[id_]

    assert (spread.mean, spread.sd, spread.unit) == (mean, sd, SpreadUnit.PD_PER_MM)
    assert spread.sd_pd(10) == pytest.approx(10 * sd)


@pytest.mark.check_value
@pytest.mark.parametrize(("id_", "mean", "sd"), WHOLE)
def test_figures_of_a_whole_operation(id_, mean, sd):
    spread = SPREADS[id_]

    assert (spread.mean, spread.sd, spread.unit) == (mean, sd, SpreadUnit.PD)
    assert spread.sd_pd(10) == sd


def test_every_figure_names_its_source():
    assert all(spread.provenance.source for spread in SPREADS.values())
    computed = [spread.id for spread in SPREADS.values() if spread.provenance.mark is not Mark.PUBLISHED]
    assert computed == ["single-mr-recess-6.0-small"]


def test_zaks_range_becomes_a_standard_deviation_by_the_mean_range_of_53_normal_values():
    """Zak 1986: 13 to 22 Δ in 53 patients, mean 16. Oracle: the mean range of n normal values by scipy integration."""
    mean_range, _ = quad(lambda x: 1 - norm.cdf(x) ** 53 - norm.sf(x) ** 53, -10, 10)

    assert mean_range == pytest.approx(RANGE_OF_53_SD, abs=0.01)
    assert SPREADS["single-mr-recess-6.0-small"].sd == pytest.approx((22 - 13) / mean_range, abs=0.01)
    assert SPREADS["single-mr-recess-6.0-small"].mean == 16
