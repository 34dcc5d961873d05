"""A proportion with its exact interval: Clopper and Pearson, Biometrika 1934;26:404-13."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from planner.statistics.beta import beta_quantile

COVERAGE: Final = 0.95


@dataclass(frozen=True, kw_only=True)
class Proportion:
    """``count`` of ``cases``; share and interval between 0 and 1, null where there is no case."""

    count: int
    cases: int
    share: float | None
    low: float | None
    high: float | None


def proportion(count: int, cases: int, coverage: float = COVERAGE) -> Proportion:
    """The share with an interval that covers the truth at least as often as ``coverage`` says."""
    if not 0 <= count <= cases:
        raise ValueError(f"{count} of {cases} is no proportion")
    if cases == 0:
        return Proportion(count=0, cases=0, share=None, low=None, high=None)
    tail = (1 - coverage) / 2
    return Proportion(
        count=count,
        cases=cases,
        share=count / cases,
        low=0.0 if count == 0 else beta_quantile(tail, count, cases - count + 1),
        high=1.0 if count == cases else beta_quantile(1 - tail, count + 1, cases - count),
    )
