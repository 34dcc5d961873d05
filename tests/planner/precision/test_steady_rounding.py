"""Rounding on which two mathematics libraries agree."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.precision import steady


@pytest.mark.parametrize("tie", [0.05, 0.25, 12.35, 31.25, 31.75, 99.95])
def test_a_tie_is_rounded_alike_from_either_side_of_the_last_place(tie):
    neighbours = [math.nextafter(tie, 0), tie, math.nextafter(tie, math.inf), tie + 4 * math.ulp(tie)]

    assert len({steady(value, 1) for value in neighbours}) == 1


def test_there_is_no_minus_zero():
    assert str(steady(-0.01, 1)) == "0.0"


@given(st.floats(-1000, 1000), st.integers(0, 4))
def test_it_is_never_off_by_more_than_half_a_place(value, digits):
    assert abs(steady(value, digits) - value) <= 0.5 * 10**-digits + 1e-8


@given(st.floats(-1000, 1000), st.integers(0, 4))
def test_twice_is_as_good_as_once(value, digits):
    assert steady(steady(value, digits), digits) == steady(value, digits)
