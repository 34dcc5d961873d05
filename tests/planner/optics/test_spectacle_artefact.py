"""Spectacles: minus lenses read more, plus lenses less, 2.5 % a dioptre."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.optics.spectacles import RULE, read_pd, true_pd
from planner.provenance import Mark

ARITHMETIC = [
    pytest.param(40, -10, 50, id="true-40-reads-50-through-minus-10"),
    pytest.param(40, 10, 30, id="true-40-reads-30-through-plus-10"),
    pytest.param(32, -10, 40, id="true-32-reads-40-through-minus-10"),
    pytest.param(53.333, 10, 40, id="true-53.3-reads-40-through-plus-10"),
]


@pytest.mark.parametrize(("eyes_pd", "lens_d", "reads_pd"), ARITHMETIC)
def test_the_rule_works_both_ways(eyes_pd, lens_d, reads_pd):
    """By hand from read = true x (1 - 0.025 F)."""
    assert read_pd(eyes_pd, lens_d) == pytest.approx(reads_pd, abs=0.01)
    assert true_pd(reads_pd, lens_d) == pytest.approx(eyes_pd, abs=0.01)


@given(st.floats(1, 100), st.floats(0.5, 20))
def test_plus_reads_less_and_minus_reads_more(eyes_pd, lens_d):
    """Published direction: Scattergood, Brown & Guyton, Am J Ophthalmol 1983;96:439-48, abstract."""
    assert read_pd(eyes_pd, lens_d) < eyes_pd < read_pd(eyes_pd, -lens_d)


@given(st.floats(-100, 100), st.floats(-20, 20))
def test_there_and_back_is_the_same(eyes_pd, lens_d):
    assert true_pd(read_pd(eyes_pd, lens_d), lens_d) == pytest.approx(eyes_pd, abs=1e-9)


def test_the_figure_says_that_it_is_from_memory():
    assert RULE.mark is Mark.FROM_MEMORY
