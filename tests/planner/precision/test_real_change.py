"""Whether a change is real or measurement error."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.precision import Method, Strength, real_change
from planner.records.examination import Range

CLEAR, BORDERLINE, CANNOT_TELL = Strength

HOLMES_2009 = [
    pytest.param(40, 52, CLEAR, id="12-above-20-is-real"),
    pytest.param(40, 51, BORDERLINE, id="11-above-20-may-be-error"),
    pytest.param(40, 45, CANNOT_TELL, id="5-above-20-tells-nothing"),
    pytest.param(12, 18, CLEAR, id="6-within-10-to-20-is-real"),
    pytest.param(12, 17, BORDERLINE, id="5-within-10-to-20-may-be-error"),
    pytest.param(15, 25, BORDERLINE, id="10-across-20-counts-by-the-wider-band"),
    pytest.param(15, 27, CLEAR, id="12-across-20-is-real"),
]


@pytest.mark.check_value
@pytest.mark.parametrize(("before_pd", "after_pd", "strength"), HOLMES_2009)
def test_published_thresholds(before_pd, after_pd, strength):
    """Holmes et al., Arch Ophthalmol 2009;127:59-65: 12 Δ or more above 20 Δ, 6 Δ or more for 10 to 20 Δ."""
    change = real_change(before_pd, after_pd, Range.DISTANCE)

    assert change.strength is strength
    assert change.difference_pd == after_pd - before_pd


def test_by_light_reflex_a_change_must_be_far_larger():
    assert real_change(20, 40, Range.NEAR).strength is CLEAR
    assert real_change(20, 40, Range.NEAR, method=Method.HIRSCHBERG).strength is not CLEAR


VALUES = st.integers(-100, 100)


@given(VALUES, VALUES, st.sampled_from(Range))
def test_the_mirrored_change_is_as_real(before_pd, after_pd, at):
    one, mirrored = real_change(before_pd, after_pd, at), real_change(-before_pd, -after_pd, at)

    assert (mirrored.strength, mirrored.difference_pd) == (one.strength, -one.difference_pd)


@given(VALUES, VALUES, st.sampled_from(Range))
def test_back_again_is_as_real_as_there(before_pd, after_pd, at):
    assert real_change(before_pd, after_pd, at).strength is real_change(after_pd, before_pd, at).strength


@given(VALUES, st.sampled_from(Range))
def test_no_change_is_never_real(value_pd, at):
    assert real_change(value_pd, value_pd, at).strength is CANNOT_TELL
