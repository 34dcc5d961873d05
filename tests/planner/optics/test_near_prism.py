"""A prism held away from the eye, with a near target."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from planner.errors import Refused
from planner.optics.near import ROTATION_CENTRE_MM, deviation_pd, prism_pd


def test_50_at_near_reads_62_with_the_prism_4_cm_from_the_cornea():
    """Thompson & Guyton, Ophthalmology 1985;92:684-90, abstract."""
    assert round(prism_pd(50, 40, 330)) == 62


def test_62_read_4_cm_from_the_cornea_is_50():
    """The same figure, the other way."""
    assert round(deviation_pd(62, 40, 330)) == 50


def _traced_pd(eye_pd, held_mm, target_mm):
    """Coordinates: centre of rotation at the origin, target straight ahead; angle between both legs at the prism."""
    distance = ROTATION_CENTRE_MM + held_mm
    at_prism = np.array([distance * eye_pd / 100, distance])
    to_target = np.array([0, ROTATION_CENTRE_MM + target_mm]) - at_prism
    cosine = at_prism @ to_target / np.linalg.norm(at_prism) / np.linalg.norm(to_target)
    return 100 * np.tan(np.arccos(cosine))


GEOMETRY = [
    pytest.param(eye_pd, held_mm, target_mm, id=f"drawn-{eye_pd}-held-{held_mm}-target-{target_mm}")
    for eye_pd, held_mm, target_mm in ((10, 20, 330), (30, 20, 330), (50, 40, 330), (70, 15, 400), (25, 0, 250))
]


@pytest.mark.parametrize(("eye_pd", "held_mm", "target_mm"), GEOMETRY)
def test_the_formula_agrees_with_drawn_geometry(eye_pd, held_mm, target_mm):
    assert prism_pd(eye_pd, held_mm, target_mm) == pytest.approx(_traced_pd(eye_pd, held_mm, target_mm), abs=1e-6)


@pytest.mark.parametrize(("eye_pd", "held_mm", "target_mm"), GEOMETRY)
def test_the_way_back_agrees_with_a_numeric_root(eye_pd, held_mm, target_mm):
    read_pd = _traced_pd(eye_pd, held_mm, target_mm)
    root = brentq(lambda eye: _traced_pd(eye, held_mm, target_mm) - read_pd, 1e-3, eye_pd + 20)

    assert deviation_pd(read_pd, held_mm, target_mm) == pytest.approx(root, abs=1e-6)


@given(st.floats(-100, 100), st.floats(0, 60), st.floats(250, 600))
def test_there_and_back_is_the_same(eye_pd, held_mm, target_mm):
    assert deviation_pd(prism_pd(eye_pd, held_mm, target_mm), held_mm, target_mm) == pytest.approx(eye_pd, abs=1e-6)


@given(st.floats(1, 100), st.floats(0, 60), st.floats(1, 40))
def test_the_further_the_prism_the_less_it_neutralises(read_pd, held_mm, further_mm):
    assert deviation_pd(read_pd, held_mm + further_mm, 330) < deviation_pd(read_pd, held_mm, 330)


@given(st.floats(1, 100), st.floats(0, 100))
def test_a_far_target_needs_no_correction(read_pd, held_mm):
    assert deviation_pd(read_pd, held_mm, 1e9) == pytest.approx(read_pd, rel=1e-5)


def test_a_deviation_that_no_prism_neutralises_is_refused():
    with pytest.raises(Refused) as refusal:
        prism_pd(200, 150, 200)

    assert refusal.value.faults[0].code == "beyond_right_angle"
