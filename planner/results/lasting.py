"""For how long people stay within 10 Δ: who is followed, from when, until when."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum

from planner.results.definitions.within_10 import met as within_10
from planner.results.result import Result
from planner.statistics import Followed


class Outside(Enum):
    """Why somebody is not followed."""

    BEYOND = "beyond 10 Δ at the first visit that counts"
    REOPERATED = "operated again before such a visit"
    UNSEEN = "without such a visit"


@dataclass(frozen=True, kw_only=True)
class Lasting:
    """Those who are followed, each from the own first visit on, and why the others are not."""

    followed: tuple[Followed, ...]
    outside: tuple[Outside, ...]


def lasting_of(results: Iterable[Result], first_days: int) -> Lasting:
    """Earlier visits count no more here than in any definition: what they find is often wanted, and passes."""
    found = [_followed(result, first_days) for result in results]
    return Lasting(
        followed=tuple(each for each in found if isinstance(each, Followed)),
        outside=tuple(each for each in found if isinstance(each, Outside)),
    )


def _followed(result: Result, first_days: int) -> Followed | Outside:
    """From the first visit on that counts, before another operation, which ends it."""
    again = result.reoperated_days
    visits = sorted(
        (each for each in result.seen if first_days <= each.days_after and (again is None or each.days_after < again)),
        key=lambda each: each.days_after,
    )
    if not visits:
        return Outside.UNSEEN if again is None else Outside.REOPERATED
    if not within_10(visits[0]):
        return Outside.BEYOND
    losses = [visit.days_after for visit in visits if not within_10(visit)]
    if again is not None:
        losses.append(again)
    last = min(losses) if losses else visits[-1].days_after
    return Followed(days=last - visits[0].days_after, failed=bool(losses))
