"""Horizontal and vertical as one deviation."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.optics import deviation_of

PYTHAGORAS = [
    pytest.param(8, 6, 10, 36.9, id="eso-8-right-hyper-6"),
    pytest.param(-8, 6, 10, 143.1, id="exo-8-right-hyper-6"),
    pytest.param(8, -6, 10, -36.9, id="eso-8-left-hyper-6"),
    pytest.param(30, 40, 50, 53.1, id="3-4-5"),
    pytest.param(0, 12, 12, 90, id="right-hyper-only"),
    pytest.param(-25, 0, 25, 180, id="exo-only"),
    pytest.param(0, 0, 0, 0, id="straight"),
]


@pytest.mark.parametrize(("horizontal_pd", "vertical_pd", "size_pd", "axis_deg"), PYTHAGORAS)
def test_size_and_axis(horizontal_pd, vertical_pd, size_pd, axis_deg):
    deviation = deviation_of(horizontal_pd, vertical_pd)

    assert (deviation.size_pd, deviation.axis_deg) == (size_pd, axis_deg)


SIZES = st.floats(-100, 100)


@given(SIZES, SIZES)
def test_the_parts_come_back(horizontal_pd, vertical_pd):
    deviation = deviation_of(horizontal_pd, vertical_pd)

    assert deviation.horizontal_pd == pytest.approx(horizontal_pd, abs=0.15)
    assert deviation.vertical_pd == pytest.approx(vertical_pd, abs=0.15)


@given(SIZES, SIZES.filter(lambda value: abs(value) > 0.1))
def test_the_mirrored_patient_has_the_same_size_and_the_opposite_axis(horizontal_pd, vertical_pd):
    one, mirrored = deviation_of(horizontal_pd, vertical_pd), deviation_of(horizontal_pd, -vertical_pd)

    assert mirrored.size_pd == one.size_pd
    assert mirrored.axis_deg % 360 == pytest.approx(-one.axis_deg % 360)
