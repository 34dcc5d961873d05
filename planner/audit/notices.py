"""What a group's figures cannot bear, in words."""

from __future__ import annotations

from collections.abc import Iterator

from planner.audit.words import interval, operations, percent
from planner.provenance import Mark, Provenance
from planner.results.report import FEW, Report
from planner.thresholds import exceeds
from planner.values.statement import Level, Notice

MANY_MISSING = 0.2

SMALL = Provenance(mark=Mark.HOUSE_RULE, source=f"fewer than {FEW} operations are said to be few")
MISSING = Provenance(
    mark=Mark.FROM_MEMORY, source="that more than a fifth lost to follow-up threatens the validity of a study"
)
CALLED = Provenance(mark=Mark.COMPUTED, source="the watch over failures")


def notices(report: Report, calls: int) -> Iterator[Notice]:
    """Small numbers, many missing, a call of the watch."""
    first = report.successes[0].among_judged
    if report.few:
        reach = f" The exact interval of success runs from {interval(first.low, first.high)}." if first.cases else ""
        yield Notice(
            level=Level.CAUTION,
            code="small_number",
            text=f"A small number: {operations(report.cases)}.{reach} Chance alone can make this look good or bad.",
            provenance=SMALL,
            facts={"cases": float(report.cases)},
        )
    missing = report.missing
    if missing.share is not None and exceeds(missing.share, MANY_MISSING):
        yield Notice(
            level=Level.CAUTION,
            code="many_missing",
            text=f"{percent(missing.share)} were neither seen in the window nor operated again by then: what is told "
            "of the others may mislead.",
            provenance=MISSING,
            facts={"missing": float(missing.count)},
        )
    if calls:
        yield Notice(
            level=Level.CAUTION,
            code="watch_calls",
            text=f"The watch called {calls} time{'' if calls == 1 else 's'}: look at these cases together.",
            provenance=CALLED,
            facts={"calls": float(calls)},
        )
