"""The audit: every group in a line, the own one first, and the groups that are wanted in full."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from planner.audit.charts import achieved, lasting, residual, watched
from planner.audit.judged import judged
from planner.audit.naming import family_words, group_words
from planner.audit.notices import notices
from planner.audit.numbers import numbers
from planner.audit.question import Question
from planner.audit.rules import COUNTED, rules
from planner.audit.words import NOTHING, interval, operations, percent
from planner.disclaimer import DISCLAIMER
from planner.results import GroupReport, report_groups
from planner.results.grouping import Grouping, grouped
from planner.results.lasting import lasting_of
from planner.results.result import Result
from planner.values.audit import Audit, Figures, GroupAudit, GroupLine
from planner.values.statement import Level, Notice
from planner.version import ENGINE_VERSION

BY_WORDS = {
    Grouping.ALL: "All together",
    Grouping.SURGEON: "By surgeon",
    Grouping.FAMILY: "By operation",
    Grouping.TABLE: "By dose table",
    Grouping.DIAGNOSIS: "By diagnosis",
}


def audit(asked: Question) -> Audit:
    """Raises ``ValueError`` where the watch expects no fewer failures than it calls worse."""
    asked = replace(asked, results=tuple(sorted(asked.results, key=lambda each: (each.operated_on, each.id))))
    reports = sorted(report_groups(asked), key=lambda group: (not _is_own(asked, group.name), -group.report.cases))
    members = grouped(asked)
    first = [reports[0].name] if reports else []
    wanted = set(first if asked.only is None else asked.only)
    return Audit(
        by_words=BY_WORDS[asked.by],
        window_words=f"Last visit from day {asked.first_days} to day {asked.last_days}",
        cases=len(asked.results),
        lines=tuple(_line(asked, group) for group in reports),
        groups=tuple(_group(asked, group, members[group.name]) for group in reports if group.name in wanted),
        notices=tuple(_untold(asked)),
        rules=tuple(rules(asked)),
        engine_version=ENGINE_VERSION,
        disclaimer=DISCLAIMER,
    )


def _line(asked: Question, group: GroupReport) -> GroupLine:
    first = group.report.successes[0].among_judged
    reach = f" ({interval(first.low, first.high)})" if first.cases else ""
    return GroupLine(
        name=group.name,
        words=group_words(asked, group.name),
        own=_is_own(asked, group.name),
        cases=group.report.cases,
        few=group.report.few,
        success_words=f"{percent(first.share)}{reach}" if first.cases else NOTHING,
    )


def _group(asked: Question, group: GroupReport, results: Sequence[Result]) -> GroupAudit:
    report = group.report
    visits = (asked.window.last_visit(result) for result in results)
    left = tuple(visit.distance_pd for visit in visits if visit)
    return GroupAudit(
        name=group.name,
        words=group_words(asked, group.name),
        own=_is_own(asked, group.name),
        cases=report.cases,
        notices=tuple(notices(report, len(group.watched.calls))),
        numbers=tuple(numbers(report, results, asked.window)),
        judged=tuple(judged(success) for success in report.successes),
        charts=(
            achieved(report),
            residual(report, left),
            lasting(lasting_of(results, asked.first_days), report.lasting, asked.first_days),
            watched(group.watched, results, asked),
        ),
        mix=(
            _mix("Operations", {family_words(name): count for name, count in group.families.items()}),
            _mix("Diagnoses", group.diagnoses),
        ),
    )


def _mix(title: str, counts: dict[str, int]) -> Figures:
    total = sum(counts.values())
    rows = sorted(counts.items(), key=lambda item: (-item[1], item[0]))
    return Figures(
        title=title,
        columns=(title, "Cases", "Share"),
        rows=tuple((name, str(count), percent(count / total)) for name, count in rows),
    )


def _untold(asked: Question) -> Iterator[Notice]:
    if asked.untold:
        verb = "is" if asked.untold == 1 else "are"
        yield Notice(
            level=Level.NOTE,
            code="not_in_these_figures",
            text=f"{operations(asked.untold)} more {verb} not in these figures: the plan expected no change of a "
            "horizontal deviation at distance.",
            provenance=COUNTED,
            facts={"operations": float(asked.untold)},
        )


def _is_own(asked: Question, name: str) -> bool:
    return asked.by is Grouping.SURGEON and name == asked.own
