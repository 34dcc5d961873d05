"""What is learned from ratios: the conjugate update of a normal mean and variance.

Formulae: DeGroot, Optimal Statistical Decisions, 1970, section 9.6; the predictive distribution is Student's t.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import fsum, sqrt
from typing import Final

from planner.calibration.prior import Prior
from planner.precision.steady import steady
from planner.statistics import student_quantile

FARTHEST_SD: Final = 3.0
"""A ratio farther from the table than so many prior standard deviations counts as one at that distance."""
LEAST_EFFECT: Final = 0.8
MOST_EFFECT: Final = 1.25
"""The effect is never taken to be outside these, whatever the cases say."""
DIGITS: Final = 6
"""Decimals of an interval: Student's t may differ in its last places from one mathematics library to another."""


@dataclass(frozen=True, kw_only=True)
class Interval:
    """A figure with its 95 % interval."""

    middle: float
    low: float
    high: float


@dataclass(frozen=True, kw_only=True)
class Posterior:
    """Normal and inverse gamma after ``cases`` ratios, of which ``held`` were drawn in to the farthest."""

    cases: int
    held: int
    mean: float
    weight: float
    shape: float
    scale: float

    @property
    def effect(self) -> float:
        """The surgeon's effect per unit of the table's promise, within the hard bounds."""
        return within_bounds(self.mean)

    def effect_interval(self) -> Interval:
        """Where the effect lies; the bounds do not narrow it."""
        return self._around(sqrt(self.scale / (self.shape * self.weight)))

    def next_case(self) -> Interval:
        """Where the ratio of the next case lies."""
        return self._around(sqrt(self.scale * (self.weight + 1) / (self.shape * self.weight)))

    def _around(self, unit: float) -> Interval:
        reach = student_quantile(0.975, 2 * self.shape) * unit
        low, middle, high = (steady(figure, DIGITS) for figure in (self.mean - reach, self.mean, self.mean + reach))
        return Interval(middle=middle, low=low, high=high)


def within_bounds(effect: float) -> float:
    """An effect, never outside the hard bounds."""
    return min(MOST_EFFECT, max(LEAST_EFFECT, effect))


def drawn_in(before: Prior, ratios: Sequence[float]) -> list[float]:
    """The ratios, each no farther from the table than counts."""
    reach = FARTHEST_SD * before.sd
    return [min(before.mean + reach, max(before.mean - reach, ratio)) for ratio in ratios]


def learn(before: Prior, ratios: Sequence[float]) -> Posterior:
    """The posterior; the order of the ratios does not matter."""
    taken = drawn_in(before, ratios)
    cases = len(taken)
    mean = fsum(taken) / cases if cases else before.mean
    squares = fsum((ratio - mean) ** 2 for ratio in taken)
    weight = before.weight + cases
    pull = before.weight * cases * (mean - before.mean) ** 2 / weight
    return Posterior(
        cases=cases,
        held=sum(drawn != ratio for drawn, ratio in zip(taken, ratios, strict=True)),
        mean=(before.weight * before.mean + cases * mean) / weight,
        weight=weight,
        shape=before.shape + cases / 2,
        scale=before.scale + (squares + pull) / 2,
    )
