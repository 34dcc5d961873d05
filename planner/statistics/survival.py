"""How long a result lasts: Kaplan and Meier, J Am Stat Assoc 1958;53:457-81, with Greenwood's variance.

The interval is made on the log(-log) scale, so that it stays between 0 and 1.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import exp, log, sqrt
from typing import Final

NORMAL_975: Final = 1.959963984540054
"""The 97.5 % point of the normal distribution."""


@dataclass(frozen=True, kw_only=True)
class Followed:
    """One person: followed for ``days``; ``failed`` when the result was lost then, else last seen with it."""

    days: float
    failed: bool


@dataclass(frozen=True, kw_only=True)
class Step:
    """From ``days`` on, ``share`` of the people still have the result; the interval is null where it has no figure."""

    days: float
    at_risk: int
    failed: int
    share: float
    low: float | None
    high: float | None


def kaplan_meier(people: Iterable[Followed]) -> tuple[Step, ...]:
    """One step for each time at which somebody lost the result, in order; intervals of 95 %."""
    lost: dict[float, int] = {}
    left: dict[float, int] = {}
    at_risk = 0
    for person in people:
        at_risk += 1
        left[person.days] = left.get(person.days, 0) + 1
        if person.failed:
            lost[person.days] = lost.get(person.days, 0) + 1
    share, greenwood = 1.0, 0.0
    steps: list[Step] = []
    for days in sorted(left):
        failed = lost.get(days, 0)
        if failed:
            share *= 1 - failed / at_risk
            if at_risk > failed:
                greenwood += failed / (at_risk * (at_risk - failed))
            low, high = _interval(share, greenwood)
            steps.append(Step(days=days, at_risk=at_risk, failed=failed, share=share, low=low, high=high))
        at_risk -= left[days]
    return tuple(steps)


def _interval(share: float, greenwood: float) -> tuple[float | None, float | None]:
    if not 0 < share < 1:
        return None, None
    reach = NORMAL_975 * sqrt(greenwood) / log(share)
    return share ** exp(-reach), share ** exp(reach)
