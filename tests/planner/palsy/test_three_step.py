"""The three-step test: complete, honest about error, and silent where it is not valid."""

from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.anatomy import Eye, Muscle
from planner.palsy import WEAK_MUSCLE, Breaker, Presence, Verticals, WeakMuscle, three_step
from planner.precision import Strength
from planner.provenance import Mark

R, L = Eye.RIGHT, Eye.LEFT
CLEAR, BORDERLINE, CANNOT_TELL = Strength

PARKS = [
    pytest.param(R, R, R, L, Muscle.IO, id="R-R-R-left-io"),
    pytest.param(R, R, L, R, Muscle.IR, id="R-R-L-right-ir"),
    pytest.param(R, L, R, R, Muscle.SO, id="R-L-R-right-so-published"),
    pytest.param(R, L, L, L, Muscle.SR, id="R-L-L-left-sr"),
    pytest.param(L, R, R, R, Muscle.SR, id="L-R-R-right-sr"),
    pytest.param(L, R, L, L, Muscle.SO, id="L-R-L-left-so"),
    pytest.param(L, L, R, L, Muscle.IR, id="L-L-R-left-ir"),
    pytest.param(L, L, L, R, Muscle.IO, id="L-L-L-right-io"),
]


def measured(hyper, gaze, tilt, size_pd=15, step_pd=10):
    """Verticals of a clear palsy: hyper of ``size_pd``, larger by ``step_pd`` on the worse side."""
    sign = 1 if hyper is R else -1
    worse, better = sign * (size_pd + step_pd), sign * size_pd
    return Verticals(
        primary_pd=sign * size_pd,
        right_pd=worse if gaze is R else better,
        left_pd=worse if gaze is L else better,
        tilt_right_pd=worse if tilt is R else better,
        tilt_left_pd=worse if tilt is L else better,
    )


@pytest.mark.check_value
@pytest.mark.parametrize(("hyper", "gaze", "tilt", "eye", "muscle"), PARKS)
def test_each_combination_names_its_muscle(hyper, gaze, tilt, eye, muscle):
    """Parks' three steps; the row of the right superior oblique as published."""
    result = three_step(measured(hyper, gaze, tilt, size_pd=8))

    assert result.weak == WeakMuscle(eye=eye, muscle=muscle)
    assert result.candidates == (result.weak,)


RAISES = {Muscle.SR, Muscle.IO}
INTORTS = {Muscle.SO, Muscle.SR}
RECTI = {Muscle.SR, Muscle.IR}


def by_muscle_actions(hyper, gaze, tilt):
    """Parks' reasoning from the actions of the muscles, one set after the other."""
    all_muscles = set(product(Eye, (Muscle.SR, Muscle.IR, Muscle.SO, Muscle.IO)))
    too_weak_to_lower_or_raise = {(eye, muscle) for eye, muscle in all_muscles if (muscle in RAISES) != (eye is hyper)}
    acting_in_gaze = {(eye, muscle) for eye, muscle in all_muscles if (muscle in RECTI) == (eye is gaze)}
    acting_on_tilt = {(eye, muscle) for eye, muscle in all_muscles if (muscle in INTORTS) == (eye is tilt)}
    return too_weak_to_lower_or_raise & acting_in_gaze & acting_on_tilt


@pytest.mark.parametrize("sides", list(product(Eye, repeat=3)), ids="-".join)
def test_the_table_follows_from_the_muscles_actions(sides):
    """Oracle: recti act in abduction and obliques in adduction; superior muscles intort."""
    weak = WEAK_MUSCLE[sides]

    assert by_muscle_actions(*sides) == {(weak.eye, weak.muscle)}


def test_only_the_published_row_is_marked_as_published():
    assert three_step(measured(R, L, R)).statement.provenance.mark is Mark.PUBLISHED
    assert three_step(measured(R, R, R)).statement.provenance.mark is Mark.COMPUTED


def test_large_differences_are_clear():
    assert three_step(measured(R, L, R, size_pd=12, step_pd=8)).strength is CLEAR


def test_differences_within_measurement_error_are_borderline_and_say_what_settles_them():
    """Holmes 2009: 5.8 Δ is the limit of a difference up to 20 Δ; 4 Δ lie within."""
    result = three_step(measured(R, L, R, size_pd=12, step_pd=4))

    assert result.strength is BORDERLINE
    assert result.weak == WeakMuscle(eye=R, muscle=Muscle.SO)
    assert len(result.settle) == 2


def test_a_step_that_cannot_be_told_leaves_both_muscles():
    verticals = Verticals(primary_pd=12, right_pd=10, left_pd=11, tilt_right_pd=22, tilt_left_pd=8)
    result = three_step(verticals)

    assert result.weak is None
    assert set(result.candidates) == {WEAK_MUSCLE[R, R, R], WEAK_MUSCLE[R, L, R]}
    assert result.strength is CANNOT_TELL
    assert result.settle == (result.gaze.settle,)


def test_without_head_tilts_two_muscles_remain():
    result = three_step(Verticals(primary_pd=12, right_pd=6, left_pd=20))

    assert set(result.candidates) == {WEAK_MUSCLE[R, L, R], WEAK_MUSCLE[R, L, L]}
    assert "tilted" in result.settle[0]


def test_without_a_hyper_nothing_is_said():
    result = three_step(Verticals(primary_pd=0, right_pd=6, left_pd=20, tilt_right_pd=9, tilt_left_pd=0))

    assert len(result.candidates) == 8
    assert result.weak is None


@pytest.mark.parametrize("breaker", Breaker)
def test_each_condition_that_breaks_the_test_silences_it(breaker):
    """Kushner, Ophthalmology 1989;96:127-32, abstract, lists them."""
    result = three_step(measured(R, L, R), {breaker: Presence.PRESENT})

    assert result.weak is None
    assert result.strength is CANNOT_TELL
    assert [notice.code for notice in result.notices] == ["three_step_not_valid"]
    assert breaker.value in result.statement.text


def test_what_nobody_excluded_is_listed():
    result = three_step(measured(R, L, R), {Breaker.SKEW: Presence.ABSENT, Breaker.MYASTHENIA: Presence.UNKNOWN})

    assert Breaker.SKEW not in result.to_exclude
    assert Breaker.MYASTHENIA in result.to_exclude
    assert len(result.to_exclude) == len(Breaker) - 1


def test_the_sensitivity_of_the_test_is_told():
    """Manchandia & Demer, J AAPOS 2014;18:567-71: 35 of 50."""
    [notice] = three_step(measured(R, L, R)).notices

    assert notice.facts["sensitivity_percent"] == 100 * 35 / 50


VERTICAL = st.none() | st.integers(-40, 40)


@given(VERTICAL, VERTICAL, VERTICAL, VERTICAL, VERTICAL)
def test_the_mirrored_patient_has_the_mirrored_muscle(primary, right, left, tilt_right, tilt_left):
    one = three_step(
        Verticals(primary_pd=primary, right_pd=right, left_pd=left, tilt_right_pd=tilt_right, tilt_left_pd=tilt_left)
    )
    mirrored = three_step(
        Verticals(
            primary_pd=mirror(primary),
            right_pd=mirror(left),
            left_pd=mirror(right),
            tilt_right_pd=mirror(tilt_left),
            tilt_left_pd=mirror(tilt_right),
        )
    )

    assert mirrored.strength is one.strength
    assert set(mirrored.candidates) == {WeakMuscle(eye=weak.eye.other, muscle=weak.muscle) for weak in one.candidates}


def mirror(vertical_pd):
    return None if vertical_pd is None else -vertical_pd


@given(VERTICAL, VERTICAL, VERTICAL, VERTICAL, VERTICAL)
def test_one_muscle_is_named_only_if_every_step_could_be_told(primary, right, left, tilt_right, tilt_left):
    result = three_step(
        Verticals(primary_pd=primary, right_pd=right, left_pd=left, tilt_right_pd=tilt_right, tilt_left_pd=tilt_left)
    )

    assert (result.weak is not None) == (result.strength is not CANNOT_TELL)
    assert result.weak is None or result.candidates == (result.weak,)
