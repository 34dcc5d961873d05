"""Doses that the engine derives lie where independent series say they should."""

import pytest

from planner.tables import Form, table
from planner.values.option import Operation
from tests.planner.patients import options


def slope(direction, operation, first_pd, last_pd):
    """Δ per total mm of both muscles between two rows of classic Parks."""
    rows = {row.first_pd: row.mm for row in table("classic-parks").columns[direction, Form.BOTH, operation].rows}
    return (last_pd - first_pd) / (2 * (rows[last_pd] - rows[first_pd]))


@pytest.mark.check_value
@pytest.mark.parametrize(("operation", "published"), [(Operation.RECESS, 5.00), (Operation.RESECT, 2.50)])
@pytest.mark.parametrize(("first", "last"), [(15, 20), (20, 25), (25, 30), (30, 35), (35, 40), (15, 40)])
def test_classic_parks_has_the_slopes_that_are_quoted_for_it(operation, published, first, last):
    """Arch Ophthalmol 2012;130:1280-4 (PMC3608524): MR recession 5.00, LR resection about 2.50 Δ per total mm."""
    assert slope("eso", operation, first, last) == pytest.approx(published)


@pytest.mark.check_value
@pytest.mark.parametrize(("angle", "graded"), [(15, 5.0), (18, 5.0), (20, 5.5), (25, 6.0), (30, 6.5), (35, 7.0)])
def test_the_doubling_rule_agrees_with_the_graded_series_to_half_a_millimetre(angle, graded):
    """PMID 20795601 printed the second figure; the rule derives the first from Wright's row of twice the angle."""
    (dose,) = options(angle)["recess-mr-left"].doses

    assert abs(dose.mm - graded) <= 0.5


@pytest.mark.parametrize("angle", [56, 60, 65, 70])
def test_three_muscles_for_esotropia_have_the_dose_response_of_a_series(angle):
    """Bayramlar et al. (n = 18): 3.32 +- 0.62 Δ/mm with both MR 5-6.5 and one LR 7-8 mm, 17 to 21 mm: 56 to 70 Δ."""
    total = sum(dose.mm for dose in options(angle)["recess-both-mr-resect-lr-left"].doses)

    assert angle / total == pytest.approx(3.32, abs=0.62)


@pytest.mark.parametrize("angle", [25, 30, 35, 40, 50])
def test_one_eye_surgery_for_exotropia_has_the_dose_response_of_a_series(angle):
    """Lai et al. 2025: children 2.82 +- 0.60, adults 3.02 +- 0.62 Δ/mm."""
    total = sum(dose.mm for dose in options(-angle)["recess-lr-resect-mr-left"].doses)

    assert 2.82 - 0.60 <= angle / total <= 3.02 + 0.62


@pytest.mark.parametrize("angle", [14, 16, 18, 20])
def test_the_doubling_rule_is_near_the_6_mm_that_a_series_gave_to_all(angle):
    """Zak 1986: 6 mm for 14 to 20 Δ, mean effect 16 Δ: what the rule gives differs by less than 2 mm."""
    offered = options(angle)["recess-mr-left"]

    assert all(abs(dose.mm - 6.0) < 2 for dose in offered.doses)
