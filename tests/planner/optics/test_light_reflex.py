"""Estimates from the corneal light reflex are rough, and say so."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.errors import Refused
from planner.optics import hirschberg, krimsky
from planner.optics.reflex import PD_PER_MM, PD_PER_MM_HIGH, PD_PER_MM_LOW
from planner.precision import Method, limits_of
from planner.records.examination import Range


def test_one_millimetre_is_22_prism_dioptres():
    """Pacific University thesis, abstract: recent studies have demonstrated 22 Δ for each millimetre."""
    assert hirschberg(1).value_pd == 22


def test_the_factor_agrees_with_43_measured_adults():
    """Invest Ophthalmol Vis Sci 2010;51:4035-9, abstract: 12.81 +- 1.22 degrees for each millimetre."""
    mean, low, high = (100 * math.tan(math.radians(angle_deg)) for angle_deg in (12.81, 12.81 - 1.22, 12.81 + 1.22))

    assert low < PD_PER_MM < high
    assert pytest.approx(mean, abs=1) == PD_PER_MM


def test_the_factor_lies_in_the_published_range():
    """Binocul Vis Strabismus Q 2006;21:45-6, abstract: 14 to 24 Δ for each millimetre."""
    assert (PD_PER_MM_LOW, PD_PER_MM_HIGH) == (14, 24)
    assert PD_PER_MM_LOW < PD_PER_MM < PD_PER_MM_HIGH


def test_the_published_range_of_the_factor_lies_within_the_estimates_range_for_2_mm():
    """14 to 24 Δ/mm at 2 mm are 28 to 48 Δ."""
    estimate = hirschberg(2)

    assert estimate.low_pd <= 28
    assert estimate.high_pd >= 48


def test_a_prism_reflex_reads_its_prism():
    estimate = krimsky(-35)

    assert (estimate.value_pd, estimate.method) == (-35, Method.KRIMSKY)


def test_both_say_that_they_are_rough():
    assert [step.code for step in hirschberg(1).steps] == ["light_reflex", "reflex_is_rough"]
    assert [step.code for step in krimsky(30).steps] == ["prism_reflex", "reflex_is_rough"]


@pytest.mark.parametrize("at", Range)
@pytest.mark.parametrize("size_pd", [15, 40])
def test_a_reflex_is_never_taken_as_more_exact_than_prism_and_cover(size_pd, at):
    """Choi & Kushner, Ophthalmology 1998;105:1301-6: substantially less accurate."""
    by_cover = limits_of(size_pd, at).half_width_pd
    by_prism = limits_of(size_pd, at, method=Method.KRIMSKY).half_width_pd
    by_light = limits_of(size_pd, at, method=Method.HIRSCHBERG).half_width_pd

    assert by_cover < by_prism < by_light


@given(st.floats(-5, 5))
def test_the_mirrored_reflex_gives_the_mirrored_estimate(displacement_mm):
    one, mirrored = hirschberg(displacement_mm), hirschberg(-displacement_mm)

    assert (mirrored.value_pd, mirrored.low_pd, mirrored.high_pd) == (-one.value_pd, -one.high_pd, -one.low_pd)


@pytest.mark.parametrize("estimate", [lambda: hirschberg(5.5), lambda: krimsky(120)], ids=["reflex", "prism"])
def test_what_cannot_be_is_refused(estimate):
    with pytest.raises(Refused) as refusal:
        estimate()

    assert refusal.value.faults[0].code == "out_of_range"
