"""Axes: from where to where, and which round figures stand at them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import StrEnum
from math import ceil, floor, sqrt
from typing import Final

from planner.thresholds import HAIR

STEPS: Final = tuple(
    digit * scale for scale in (0.01, 0.1, 1.0, 10.0, 100.0, 1000.0, 10000.0) for digit in (1.0, 2.0, 5.0)
)
MOST_TICKS: Final = 7

DAYS_OF_A_WEEK: Final = 7.0
DAYS_OF_A_MONTH: Final = 365.25 / 12
DAYS_OF_A_YEAR: Final = 365.25
FEW_WEEKS_DAYS: Final = 85
FEW_MONTHS_DAYS: Final = 1100
NAMED_DAYS: Final = (
    (0.0, "0"),
    (1.0, "day 1"),
    (7.0, "1 week"),
    (28.0, "4 weeks"),
    (56.0, "8 weeks"),
    (6 * DAYS_OF_A_MONTH, "6 months"),
    (DAYS_OF_A_YEAR, "1 year"),
    (2 * DAYS_OF_A_YEAR, "2 years"),
    (3 * DAYS_OF_A_YEAR, "3 years"),
    (5 * DAYS_OF_A_YEAR, "5 years"),
    (10 * DAYS_OF_A_YEAR, "10 years"),
    (20 * DAYS_OF_A_YEAR, "20 years"),
)
"""The days at which patients are usually seen; those whose words would meet are drawn without words."""


class Spacing(StrEnum):
    """How figures lie along an axis: evenly, or by their square root, which gives room to the first days."""

    EVEN = "even"
    ROOT = "root"


@dataclass(frozen=True, kw_only=True)
class Tick:
    """A figure at an axis, in words."""

    at: float
    words: str


@dataclass(frozen=True, kw_only=True)
class Axis:
    """``title`` names the figure with its unit. An axis spaced by the root begins at 0."""

    title: str
    low: float
    high: float
    ticks: tuple[Tick, ...]
    spacing: Spacing = Spacing.EVEN

    def share(self, figure: float) -> float:
        """Where ``figure`` lies, 0 at the beginning and 1 at the end; what lies beyond stands at the end."""
        inside = min(max(figure, self.low), self.high)
        if self.spacing is Spacing.ROOT:
            return sqrt(inside / self.high)
        return (inside - self.low) / (self.high - self.low)


def round_axis(title: str, figures: Iterable[float], most: int = MOST_TICKS) -> Axis:
    """From a round figure below all ``figures`` to one above them, with at most ``most`` ticks."""
    known = list(figures) or [0.0, 1.0]
    least, greatest = min(known), max(known)
    if greatest - least < HAIR:
        least, greatest = least - 1, greatest + 1
    step = next(each for each in STEPS if _count(least, greatest, each) <= most)
    first, last = _bounds(least, greatest, step)
    ticks = tuple(_tick(number * step) for number in range(first, last + 1))
    return Axis(title=title, low=ticks[0].at, high=ticks[-1].at, ticks=ticks)


def alike(horizontal: str, upright: str, figures: Iterable[float]) -> tuple[Axis, Axis]:
    """Two axes with the same figures, so that equal figures lie on the identity line."""
    across = round_axis(horizontal, figures)
    return across, Axis(title=upright, low=across.low, high=across.high, ticks=across.ticks)


def days_axis(title: str, last_day: float) -> Axis:
    """Evenly from 0 to ``last_day``, in weeks, months or years, which the title names."""
    if last_day <= FEW_WEEKS_DAYS:
        return _in_units(title, max(last_day, 1.0), DAYS_OF_A_WEEK, "weeks", (1.0, 2.0))
    if last_day <= FEW_MONTHS_DAYS:
        return _in_units(title, last_day, DAYS_OF_A_MONTH, "months", (1.0, 2.0, 3.0, 6.0))
    return _in_units(title, last_day, DAYS_OF_A_YEAR, "years", (1.0, 2.0, 5.0, 10.0))


def course_axis(title: str, last_day: float) -> Axis:
    """From the operation to ``last_day``, spaced by the root, with the days at which patients are usually seen."""
    high = max(last_day, DAYS_OF_A_WEEK)
    ticks = tuple(Tick(at=at, words=words) for at, words in NAMED_DAYS if at <= high)
    return Axis(title=title, low=0.0, high=high, ticks=ticks, spacing=Spacing.ROOT)


def signed(figure: float) -> str:
    """A figure with a true minus, as short as it is exact."""
    return f"{figure:g}".replace("-", "\N{MINUS SIGN}")


def _in_units(title: str, last_day: float, unit: float, name: str, steps: Sequence[float]) -> Axis:
    step = next((each for each in steps if last_day / unit / each <= MOST_TICKS), steps[-1])
    numbers = range(int(last_day / unit / step + HAIR) + 1)
    ticks = tuple(Tick(at=number * step * unit, words=f"{number * step:g}") for number in numbers)
    return Axis(title=f"{title}, {name}", low=0.0, high=last_day, ticks=ticks)


def _tick(figure: float) -> Tick:
    at = round(figure, 2) + 0.0
    return Tick(at=at, words=signed(at))


def _bounds(least: float, greatest: float, step: float) -> tuple[int, int]:
    return floor(least / step + HAIR), ceil(greatest / step - HAIR)


def _count(least: float, greatest: float, step: float) -> int:
    first, last = _bounds(least, greatest, step)
    return last - first + 1
