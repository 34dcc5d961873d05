"""One step of the three-step test: a side, and how firmly it stands."""

from __future__ import annotations

from dataclasses import dataclass

from planner.anatomy import Eye
from planner.precision.limits import Direction, Limits, difference_limits_pd, limits_of
from planner.precision.strength import sign_strength
from planner.records.examination import Range
from planner.values.statement import Strength


@dataclass(frozen=True, kw_only=True)
class Step:
    """``side`` is the higher eye, the gaze or the tilt; None where it cannot be told.

    ``difference_pd`` is what decided, towards ``side``, and ``limits_pd`` its 95 % limits; both None if not measured.
    ``settle`` says what to measure, empty where the step is clear or waits for the step before it.
    """

    side: Eye | None
    difference_pd: float | None
    limits_pd: float | None
    strength: Strength
    settle: str


def hyper_step(vertical_pd: float | None, at: Range, settle: str) -> Step:
    """Which eye is higher, from a vertical deviation (right hyper +)."""
    if vertical_pd is None:
        return _not_measured(settle)
    return _step(vertical_pd, _limits(vertical_pd, at).half_width_pd, settle)


def side_step(right_pd: float | None, left_pd: float | None, at: Range, hyper: Eye | None, settle: str) -> Step:
    """On which side the hyper of the eye ``hyper`` is larger, from the verticals on both sides (right hyper +)."""
    if hyper is None:
        return _not_measured("")
    if right_pd is None or left_pd is None:
        return _not_measured(settle)
    limits_pd = difference_limits_pd(_limits(right_pd, at), _limits(left_pd, at))
    difference_pd = right_pd - left_pd if hyper is Eye.RIGHT else left_pd - right_pd
    return _step(difference_pd, limits_pd, settle)


def _step(difference_pd: float, limits_pd: float, settle: str) -> Step:
    strength = sign_strength(difference_pd, limits_pd)
    told = strength is not Strength.CANNOT_TELL
    side = Eye.RIGHT if difference_pd > 0 else Eye.LEFT
    return Step(
        side=side if told else None,
        difference_pd=abs(difference_pd),
        limits_pd=limits_pd,
        strength=strength,
        settle="" if strength is Strength.CLEAR else settle,
    )


def _not_measured(settle: str) -> Step:
    return Step(side=None, difference_pd=None, limits_pd=None, strength=Strength.CANNOT_TELL, settle=settle)


def _limits(vertical_pd: float, at: Range) -> Limits:
    return limits_of(vertical_pd, at, direction=Direction.VERTICAL)
