"""How many: operated, seen, missing, over and under, operated again."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.audit.words import spread, whole
from planner.results.report import Report
from planner.results.result import Result
from planner.statistics import proportion
from planner.values.audit import Told


def numbers(report: Report, results: Sequence[Result], window: str) -> Iterator[Told]:
    """Nobody is dropped: who was not seen stands beside who was."""
    seen = report.residual.cases
    elsewhere = sum(bool(result.seen) for result in results) - seen
    yield Told(label="Operated", words=str(report.cases))
    yield Told(label="Seen in the window", words=whole(proportion(seen, report.cases)), note=window)
    yield Told(
        label="Missing in the window",
        words=whole(proportion(report.cases - seen, report.cases)),
        note=f"{elsewhere} of them measured at another time" if elsewhere else "",
    )
    yield Told(label="Undercorrected by more than 10 Δ", words=whole(report.undercorrected), note="of those seen")
    yield Told(label="Overcorrected by more than 10 Δ", words=whole(report.overcorrected), note="of those seen")
    yield Told(label="Operated again", words=whole(report.reoperated), note="of all, whenever it was")
    yield Told(label="Deviation left", words=spread(report.residual), note="at distance, eso +, exo \N{MINUS SIGN}")
