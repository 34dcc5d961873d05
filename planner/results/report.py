"""A group of results, in figures."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from planner.provenance import Provenance
from planner.results.definitions import DEFINITIONS, Definition, Verdict
from planner.results.definitions.within_10 import met as within_10
from planner.results.lasting import lasting_of
from planner.results.result import Result, Seen
from planner.results.window import Window
from planner.statistics import Proportion, Step, Summary, kaplan_meier, proportion, summary

FEW: Final = 20
"""Below this a group is said to be small."""


@dataclass(frozen=True, kw_only=True)
class Success:
    """By one definition: of those that can be judged, and what the others could make of it.

    ``reoperated`` of those judged are failures because somebody operated again; ``missing`` were not seen in time,
    ``cannot_tell`` were seen without what the definition needs.
    """

    id: str
    words: str
    provenance: Provenance
    among_judged: Proportion
    reoperated: int
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

    ``reoperated`` counts whoever was operated again at any time, ``reoperated_in_time`` by the last day of the window.
    ``missing`` were neither seen in the window nor operated again by its last day.
    ``lasting``: within 10 Δ from the first visit that counts on, until a visit finds more, or somebody operates again.
    """

    cases: int
    few: bool
    successes: tuple[Success, ...]
    undercorrected: Proportion
    overcorrected: Proportion
    reoperated: Proportion
    reoperated_in_time: Proportion
    missing: Proportion
    residual: Summary
    beyond: Summary
    pairs: tuple[Pair, ...]
    lasting: tuple[Step, ...]


def report(results: Sequence[Result], window: Window) -> Report:
    """Counts every result, the unseen included."""
    seen = [(result, visit) for result in results if (visit := window.last_visit(result))]
    in_time = [result for result in results if window.was_reoperated(result)]
    known = {result.id for result, _ in seen} | {result.id for result in in_time}
    missed = [_toward(result) * visit.distance_pd for result, visit in seen if not within_10(visit)]
    pairs = tuple(_pair(result, visit) for result, visit in seen)
    return Report(
        cases=len(results),
        few=len(results) < FEW,
        successes=tuple(_success(definition, results, window) for definition in DEFINITIONS),
        undercorrected=proportion(sum(left > 0 for left in missed), len(seen)),
        overcorrected=proportion(sum(left < 0 for left in missed), len(seen)),
        reoperated=proportion(sum(result.reoperated_days is not None for result in results), len(results)),
        reoperated_in_time=proportion(len(in_time), len(results)),
        missing=proportion(len(results) - len(known), len(results)),
        residual=summary([visit.distance_pd for _, visit in seen]),
        beyond=summary([pair.achieved_pd - pair.expected_pd for pair in pairs]),
        pairs=pairs,
        lasting=kaplan_meier(lasting_of(results, window.first_days).followed),
    )


def _success(definition: Definition, results: Sequence[Result], window: Window) -> Success:
    verdicts = [definition.judge(result, window) for result in results if definition.concerns(result)]
    met, told = verdicts.count(Verdict.MET), sum(verdict.is_told for verdict in verdicts)
    open_ = len(verdicts) - told
    return Success(
        id=definition.id,
        words=definition.words,
        provenance=definition.provenance,
        among_judged=proportion(met, told),
        reoperated=verdicts.count(Verdict.REOPERATED),
        missing=verdicts.count(Verdict.MISSING),
        cannot_tell=verdicts.count(Verdict.CANNOT_TELL),
        if_all_missing_failed=proportion(met, len(verdicts)),
        if_all_missing_succeeded=proportion(met + open_, len(verdicts)),
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
