"""AC/A by heterophoria and by gradient."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.accommodation import AcaClass, gradient_aca, heterophoria_aca
from planner.errors import Refused
from planner.precision import Strength
from planner.records.examination import Range


def test_the_heterophoria_method_on_a_published_exam_question():
    """mrcophth.com, mock 6, station 6: pupil distance 60 mm, +36 at distance, +30 at 33 cm; 6 + (30 - 36) / 3 = 4."""
    aca = heterophoria_aca(distance_pd=36, near_pd=30, pupil_distance_mm=60)

    assert (aca.ratio, aca.aca_class) == (4, AcaClass.NORMAL)


def test_the_gradient_method_on_a_published_exam_question():
    """mrcophth.com, mock 7, station 7: +10 at distance, +25 through -3.00; (25 - 10) / 3 = 5."""
    aca = gradient_aca(without_lens_pd=10, with_lens_pd=25, lens_d=-3, at=Range.DISTANCE)

    assert (aca.ratio, aca.aca_class) == (5, AcaClass.NORMAL)


def test_the_gradient_method_between_two_lenses_on_a_published_exam_question():
    """mrcophth.com, mock 14, station 4: +12 through -2.00, -4 through +2.00; 16 / 4 = 4."""
    aca = gradient_aca(without_lens_pd=-4, with_lens_pd=12, lens_d=-4, at=Range.DISTANCE)

    assert aca.ratio == 4


CLASSES = [
    pytest.param(6, AcaClass.HIGH, id="6-is-high"),
    pytest.param(5, AcaClass.NORMAL, id="5-is-still-normal"),
    pytest.param(3, AcaClass.NORMAL, id="3-is-normal"),
    pytest.param(2, AcaClass.LOW, id="2-is-low"),
]


@pytest.mark.parametrize(("ratio", "aca_class"), CLASSES)
def test_the_published_normal_range_is_3_to_5(ratio, aca_class):
    """Normal 3 to 5, gradient above 5 high: figures as published in the clinical literature."""
    aca = gradient_aca(without_lens_pd=30, with_lens_pd=30 - 3 * ratio, lens_d=3, at=Range.NEAR)

    assert (aca.ratio, aca.aca_class) == (ratio, aca_class)


def test_plus_and_minus_lenses_give_the_same_ratio():
    plus = gradient_aca(without_lens_pd=30, with_lens_pd=15, lens_d=3, at=Range.NEAR)
    minus = gradient_aca(without_lens_pd=15, with_lens_pd=30, lens_d=-3, at=Range.NEAR)

    assert plus.ratio == minus.ratio


def test_the_error_of_both_readings_is_carried_into_the_ratio():
    """Holmes 2009: a difference of two near readings above 20 Δ is +-11.7 Δ, over 3 D +-3.9."""
    aca = gradient_aca(without_lens_pd=40, with_lens_pd=25, lens_d=3, at=Range.NEAR)

    assert aca.limits == 3.9
    assert aca.strength is Strength.BORDERLINE


def test_a_ratio_far_from_normal_is_clear():
    assert gradient_aca(without_lens_pd=50, with_lens_pd=22, lens_d=3, at=Range.NEAR).strength is Strength.CLEAR


@pytest.mark.parametrize(
    ("call", "code", "field"),
    [
        (lambda: gradient_aca(without_lens_pd=1, with_lens_pd=2, lens_d=0, at=Range.NEAR), "no_lens", "lens_d"),
        (lambda: gradient_aca(without_lens_pd=1, with_lens_pd=2, lens_d=9, at=Range.NEAR), "out_of_range", "lens_d"),
        (
            lambda: heterophoria_aca(distance_pd=1, near_pd=2, pupil_distance_mm=6),
            "out_of_range",
            "pupil_distance_mm",
        ),
    ],
    ids=["no-lens", "too-strong-a-lens", "centimetres-for-millimetres"],
)
def test_what_cannot_be_is_refused(call, code, field):
    with pytest.raises(Refused) as refusal:
        call()

    assert (refusal.value.faults[0].code, refusal.value.faults[0].field) == (code, field)


@given(st.integers(-60, 60), st.integers(-60, 60), st.integers(1, 20))
def test_more_eso_at_near_means_a_higher_ratio(distance_pd, near_pd, more_pd):
    one = heterophoria_aca(distance_pd=distance_pd, near_pd=near_pd, pupil_distance_mm=60)
    more = heterophoria_aca(distance_pd=distance_pd, near_pd=near_pd + more_pd, pupil_distance_mm=60)

    assert more.ratio > one.ratio


@given(st.integers(-60, 60), st.floats(45, 75))
def test_equal_readings_leave_the_pupil_distance(value_pd, pupil_distance_mm):
    aca = heterophoria_aca(distance_pd=value_pd, near_pd=value_pd, pupil_distance_mm=pupil_distance_mm)

    assert aca.ratio == pytest.approx(pupil_distance_mm / 10, abs=0.051)
