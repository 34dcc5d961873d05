"""A group of results, in figures."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final

from planner.provenance import Provenance
from planner.results.definitions import DEFINITIONS, Definition
from planner.results.definitions.within_10 import met as within_10
from planner.results.result import Result, Seen
from planner.statistics import Followed, Proportion, Step, Summary, kaplan_meier, proportion, summary

FEW: Final = 20
"""Below this a group is said to be small."""


@dataclass(frozen=True, kw_only=True)
class Success:
    """By one definition, at the last visit in the window: of those that can be told, and what the missing could do.

    ``missing`` were not seen then, ``cannot_tell`` were seen without what the definition needs.
    """

    id: str
    words: str
    provenance: Provenance
    among_seen: Proportion
    missing: int
    cannot_tell: int
    if_all_missing_failed: Proportion
    if_all_missing_succeeded: Proportion


@dataclass(frozen=True, kw_only=True)
class Pair:
    """One result, Δ: the correction that was expected and the one that was achieved, in the direction operated for."""

    id: str
    expected_pd: float
    achieved_pd: float


@dataclass(frozen=True, kw_only=True)
class Report:
    """``residual`` is the deviation at the last visit in the window, eso +; ``beyond`` what was achieved over expected.

    ``lasting``: within 10 Δ at the first visit, until a visit finds more, or somebody operates again.
    """

    cases: int
    few: bool
    successes: tuple[Success, ...]
    undercorrected: Proportion
    overcorrected: Proportion
    reoperated: Proportion
    residual: Summary
    beyond: Summary
    pairs: tuple[Pair, ...]
    lasting: tuple[Step, ...]


def report(results: Sequence[Result], first_days: int, last_days: int) -> Report:
    """Counts every result, the unseen included."""
    last = {result.id: last_visit(result, first_days, last_days) for result in results}
    seen = [(result, visit) for result in results if (visit := last[result.id])]
    missed = [_toward(result) * visit.distance_pd for result, visit in seen if not within_10(visit)]
    pairs = tuple(_pair(result, visit) for result, visit in seen)
    return Report(
        cases=len(results),
        few=len(results) < FEW,
        successes=tuple(_success(definition, results, last) for definition in DEFINITIONS),
        undercorrected=proportion(sum(left > 0 for left in missed), len(seen)),
        overcorrected=proportion(sum(left < 0 for left in missed), len(seen)),
        reoperated=proportion(sum(result.reoperated_days is not None for result in results), len(results)),
        residual=summary([visit.distance_pd for _, visit in seen]),
        beyond=summary([pair.achieved_pd - pair.expected_pd for pair in pairs]),
        pairs=pairs,
        lasting=kaplan_meier(followed_of(results)),
    )


def last_visit(result: Result, first_days: int, last_days: int) -> Seen | None:
    """The last visit in the window; what was seen after another operation is not this one's result."""
    end = last_days if result.reoperated_days is None else min(last_days, result.reoperated_days)
    visits = [visit for visit in result.seen if first_days <= visit.days_after <= end]
    return max(visits, key=lambda visit: visit.days_after, default=None)


def _success(definition: Definition, results: Sequence[Result], last: dict[str, Seen | None]) -> Success:
    concerned = [last[result.id] for result in results if definition.concerns(result)]
    answers = [definition.met(visit) for visit in concerned if visit]
    met, told = answers.count(True), len(answers) - answers.count(None)
    open_ = len(concerned) - told
    return Success(
        id=definition.id,
        words=definition.words,
        provenance=definition.provenance,
        among_seen=proportion(met, told),
        missing=concerned.count(None),
        cannot_tell=answers.count(None),
        if_all_missing_failed=proportion(met, len(concerned)),
        if_all_missing_succeeded=proportion(met + open_, len(concerned)),
    )


def _pair(result: Result, visit: Seen) -> Pair:
    toward = _toward(result)
    return Pair(
        id=result.id,
        expected_pd=toward * (result.before_pd - result.expected_pd),
        achieved_pd=toward * (result.before_pd - visit.distance_pd),
    )


def _toward(result: Result) -> int:
    """The sign of the deviation that was operated."""
    return 1 if result.before_pd > 0 else -1


def followed_of(results: Iterable[Result]) -> tuple[Followed, ...]:
    """Those who were within 10 Δ at their first visit: until when, and whether it was lost."""
    return tuple(followed for result in results if (followed := _followed(result)))


def _followed(result: Result) -> Followed | None:
    """From a first visit within 10 Δ on; null for those who never were, or were not seen."""
    visits = sorted(result.seen, key=lambda visit: visit.days_after)
    if not visits or not within_10(visits[0]):
        return None
    losses = [visit.days_after for visit in visits if not within_10(visit)]
    if result.reoperated_days is not None:
        losses.append(result.reoperated_days)
    if losses:
        return Followed(days=min(losses), failed=True)
    return Followed(days=visits[-1].days_after, failed=False)
