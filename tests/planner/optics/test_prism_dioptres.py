"""Prism dioptres and degrees agree with the definition, ISO 13666 and UCUM [p'diop]: 100 tan(angle)."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.errors import Refused
from planner.optics import degrees_from_pd, pd_from_degrees

DEFINITION = [
    pytest.param(10, 5.71, id="10-pd-iso-13666"),
    pytest.param(20, 11.31, id="20-pd-iso-13666"),
    pytest.param(40, 21.80, id="40-pd-iso-13666"),
    pytest.param(50, 26.57, id="50-pd-iso-13666"),
    pytest.param(100, 45.00, id="100-pd-iso-13666"),
]


@pytest.mark.check_value
@pytest.mark.parametrize(("value_pd", "value_deg"), DEFINITION)
def test_prism_dioptres_are_the_tangent_of_the_angle(value_pd, value_deg):
    assert degrees_from_pd(value_pd) == pytest.approx(value_deg, abs=0.005)
    assert pd_from_degrees(value_deg) == pytest.approx(value_pd, abs=0.02)


def test_an_arc_of_one_millimetre_on_a_globe_of_24_mm_is_8_35_prism_dioptres():
    """360 / (24 pi) = 4.77 degrees, 8.35 Δ: anatomy by arithmetic."""
    assert pd_from_degrees(4.7746) == pytest.approx(8.35, abs=0.005)


@given(st.floats(-500, 500))
def test_there_and_back_is_the_same(value_pd):
    assert pd_from_degrees(degrees_from_pd(value_pd)) == pytest.approx(value_pd, abs=1e-6)


@given(st.floats(-500, 500))
def test_the_mirrored_deviation_has_the_mirrored_angle(value_pd):
    assert degrees_from_pd(-value_pd) == -degrees_from_pd(value_pd)


def test_a_right_angle_is_refused():
    with pytest.raises(Refused) as refusal:
        pd_from_degrees(90)

    assert refusal.value.faults[0].code == "beyond_right_angle"
