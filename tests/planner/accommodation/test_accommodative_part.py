"""The accommodative part of an esotropia: without against with correction."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.accommodation import PartClass, accommodative_part
from planner.precision import Strength
from planner.provenance import Mark
from planner.records.examination import Range

PARTS = [
    pytest.param(25, 1, PartClass.FULLY, 24, id="exam-question-25-with-plus-4-at-aca-6"),
    pytest.param(50, 30, PartClass.PARTLY, 20, id="20-of-50-goes"),
    pytest.param(50, 38, PartClass.PARTLY, 12, id="12-above-20-is-real-holmes-2009"),
    pytest.param(50, 39, PartClass.NOT_SHOWN, 11, id="11-above-20-may-be-error-holmes-2009"),
    pytest.param(18, 12, PartClass.PARTLY, 6, id="6-up-to-20-is-real-holmes-2009"),
    pytest.param(30, 10, PartClass.FULLY, 20, id="10-remaining-counts-as-within"),
    pytest.param(30, 35, PartClass.NOT_SHOWN, -5, id="more-with-correction"),
]


@pytest.mark.parametrize(("without_pd", "with_pd", "found", "part_pd"), PARTS)
def test_what_goes_with_the_correction(without_pd, with_pd, found, part_pd):
    """First: mrcophth.com, mock 7, station 7: 25 Δ, +4.00 D, AC/A 6: 24 Δ go. The rest by Holmes' real change."""
    part = accommodative_part(without_pd=without_pd, with_pd=with_pd, at=Range.DISTANCE)

    assert (part.part_class, part.part_pd, part.remaining_pd) == (found, part_pd, with_pd)
    assert part.statement.provenance.mark is Mark.FROM_MEMORY


def test_an_exodeviation_has_no_accommodative_part():
    assert accommodative_part(without_pd=-30, with_pd=-30, at=Range.DISTANCE) is None


def test_a_remainder_near_10_is_borderline_and_says_what_settles_it():
    part = accommodative_part(without_pd=40, with_pd=12, at=Range.DISTANCE)

    assert part.strength is Strength.BORDERLINE
    assert part.settle


def test_straight_with_correction_is_clear():
    part = accommodative_part(without_pd=40, with_pd=0, at=Range.DISTANCE)

    assert (part.strength, part.settle) == (Strength.CLEAR, "")


@given(st.integers(1, 100), st.integers(-20, 100), st.sampled_from(Range))
def test_part_and_remainder_make_the_whole(without_pd, with_pd, at):
    part = accommodative_part(without_pd=without_pd, with_pd=with_pd, at=at)

    assert part.part_pd + part.remaining_pd == without_pd


@given(st.integers(1, 100), st.integers(-20, 100), st.sampled_from(Range))
def test_fully_accommodative_never_leaves_more_than_10(without_pd, with_pd, at):
    part = accommodative_part(without_pd=without_pd, with_pd=with_pd, at=at)
    if part.part_class is PartClass.FULLY:
        assert part.remaining_pd <= 10
    if part.part_class is PartClass.PARTLY:
        assert part.remaining_pd > 10
