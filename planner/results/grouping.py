"""Results by what they have in common, and a watch over all of them in the order of the operations."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

from planner.limits import Length, Unique, Within
from planner.results.definitions import within_10
from planner.results.report import Report, report
from planner.results.result import Result
from planner.results.window import Window
from planner.statistics import RunLengths, Vigil, run_lengths, watch


class Grouping(StrEnum):
    """What results are put together by."""

    ALL = "all"
    SURGEON = "surgeon"
    FAMILY = "family"
    TABLE = "table"
    DIAGNOSIS = "diagnosis"


@dataclass(frozen=True, kw_only=True)
class Reporting:
    """Which results, by what, with which visits; and what the watch expects of failures, as shares.

    The defaults are house rules, not published figures: whoever asks sets what holds for the clinic.
    """

    results: Annotated[tuple[Result, ...], Length(0, 20000), Unique(("id",))]
    by: Grouping = Grouping.ALL
    first_days: Annotated[int, Within(1, 3650, "days")] = 28
    last_days: Annotated[int, Within(1, 3650, "days")] = 120
    failures_expected: Annotated[float, Within(0.01, 0.9, "share of failures")] = 0.25
    failures_worse: Annotated[float, Within(0.02, 0.95, "share of failures")] = 0.45
    limit: Annotated[float, Within(0.5, 10, "log likelihood ratio")] = 2.5

    @property
    def window(self) -> Window:
        """The visits that count."""
        return Window(first_days=self.first_days, last_days=self.last_days)


@dataclass(frozen=True, kw_only=True)
class Watched:
    """The sum after each result that was judged, where it called, and how often it errs."""

    ids: tuple[str, ...]
    levels: tuple[float, ...]
    calls: tuple[str, ...]
    limit: float
    run_lengths: RunLengths


@dataclass(frozen=True, kw_only=True)
class GroupReport:
    """One group by name; the case mix stands in ``families`` and ``diagnoses``, with how many of each."""

    name: str
    families: dict[str, int]
    diagnoses: dict[str, int]
    report: Report
    watched: Watched


def report_groups(asked: Reporting) -> tuple[GroupReport, ...]:
    """A report for each group, by name. Raises ``ValueError`` if the watch expects no fewer failures than are worse."""
    vigil = Vigil(expected=asked.failures_expected, worse=asked.failures_worse, limit=asked.limit)
    lengths = run_lengths(vigil)
    groups = grouped(asked)
    return tuple(
        GroupReport(
            name=name,
            families=_counts([result.family for result in groups[name]]),
            diagnoses=_counts([result.diagnosis for result in groups[name]]),
            report=report(groups[name], asked.window),
            watched=_watched(vigil, lengths, groups[name], asked.window),
        )
        for name in sorted(groups)
    )


def grouped(asked: Reporting) -> dict[str, list[Result]]:
    """The results of each group, by its name."""
    groups: dict[str, list[Result]] = defaultdict(list)
    for result in asked.results:
        groups[_name(result, asked.by)].append(result)
    return groups


def _name(result: Result, by: Grouping) -> str:
    match by:
        case Grouping.SURGEON:
            return result.surgeon
        case Grouping.FAMILY:
            return result.family
        case Grouping.TABLE:
            return result.table
        case Grouping.DIAGNOSIS:
            return result.diagnosis
        case Grouping.ALL:
            return Grouping.ALL.value


def _counts(names: list[str]) -> dict[str, int]:
    return {name: names.count(name) for name in sorted(set(names))}


def _watched(vigil: Vigil, lengths: RunLengths, results: list[Result], window: Window) -> Watched:
    """Those who can be judged within 10 Δ, by the day of their operation."""
    ordered = sorted(results, key=lambda result: (result.operated_on, result.id))
    verdicts = ((result.id, within_10.DEFINITION.judge(result, window)) for result in ordered)
    told = [(id_, verdict) for id_, verdict in verdicts if verdict.is_told]
    levels = watch(vigil, (verdict.is_failure for _, verdict in told))
    ids = tuple(id_ for id_, _ in told)
    return Watched(
        ids=ids,
        levels=levels,
        calls=tuple(id_ for id_, level in zip(ids, levels, strict=True) if level >= vigil.limit),
        limit=vigil.limit,
        run_lengths=lengths,
    )
