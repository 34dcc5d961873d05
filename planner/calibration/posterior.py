"""What is learned from ratios: the conjugate update of a normal mean and variance.

Formulae: DeGroot, Optimal Statistical Decisions, 1970, section 9.6; the predictive distribution is Student's t. A ratio
counts by the inverse of its relative variance, which keeps all of it in closed form.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import fsum, sqrt
from typing import Final

from planner.calibration.admission import PastCase
from planner.calibration.prior import Prior
from planner.precision.steady import steady
from planner.statistics import student_quantile

FARTHEST_SD: Final = 3.0
"""A ratio farther from the table than so many prior standard deviations of its angle counts as one at that distance."""
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

    before: Prior
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

    def next_case(self, promised_pd: float) -> Interval:
        """Where the ratio of the next case lies of which so much is promised."""
        variance = self.before.relative_variance(promised_pd) + 1 / self.weight
        return self._around(sqrt(self.scale * variance / self.shape))

    def _around(self, unit: float) -> Interval:
        reach = student_quantile(0.975, 2 * self.shape) * unit
        low, middle, high = (steady(figure, DIGITS) for figure in (self.mean - reach, self.mean, self.mean + reach))
        return Interval(middle=middle, low=low, high=high)


def within_bounds(effect: float) -> float:
    """An effect, never outside the hard bounds."""
    return min(MOST_EFFECT, max(LEAST_EFFECT, effect))


@dataclass(frozen=True, kw_only=True)
class Counted:
    """A ratio as it counts: no farther from the table than it may, by its weight in cases of the reference angle."""

    ratio: float
    weight: float
    is_held: bool


def counted(before: Prior, cases: Sequence[PastCase]) -> list[Counted]:
    """In the order given."""
    return [_counted(before, case) for case in cases]


def _counted(before: Prior, case: PastCase) -> Counted:
    variance = before.relative_variance(case.promised_pd)
    reach = FARTHEST_SD * before.sd * sqrt(variance)
    ratio = min(before.mean + reach, max(before.mean - reach, case.ratio))
    return Counted(ratio=ratio, weight=1 / variance, is_held=ratio != case.ratio)


def learn(before: Prior, cases: Sequence[PastCase]) -> Posterior:
    """The posterior; the order of the cases does not matter."""
    taken = counted(before, cases)
    told = fsum(each.weight for each in taken)
    mean = fsum(each.weight * each.ratio for each in taken) / told if taken else before.mean
    squares = fsum(each.weight * (each.ratio - mean) ** 2 for each in taken)
    weight = before.weight + told
    pull = before.weight * told * (mean - before.mean) ** 2 / weight
    return Posterior(
        before=before,
        cases=len(taken),
        held=sum(each.is_held for each in taken),
        mean=(before.weight * before.mean + told * mean) / weight,
        weight=weight,
        shape=before.shape + len(taken) / 2,
        scale=before.scale + (squares + pull) / 2,
    )
