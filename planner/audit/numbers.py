"""How many: operated, seen, operated again, missing, over and under."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.audit.words import spread, whole
from planner.results.report import Report
from planner.results.result import Result
from planner.results.window import Window
from planner.statistics import proportion
from planner.values.audit import Told


def numbers(report: Report, results: Sequence[Result], window: Window) -> Iterator[Told]:
    """Nobody is dropped: who was not seen stands beside who was."""
    seen = report.residual.cases
    days = f"day {window.first_days} to day {window.last_days}"
    yield Told(label="Operated", words=str(report.cases))
    yield Told(label="Seen in the window", words=whole(proportion(seen, report.cases)), note=days)
    yield Told(
        label=f"Operated again by day {window.last_days}",
        words=whole(report.reoperated_in_time),
        note="counted as failed, seen or not",
    )
    yield Told(label="Missing in the window", words=whole(report.missing), note=_missing(results, window))
    yield Told(label="Undercorrected by more than 10 Δ", words=whole(report.undercorrected), note="of those seen")
    yield Told(label="Overcorrected by more than 10 Δ", words=whole(report.overcorrected), note="of those seen")
    yield Told(label="Operated again", words=whole(report.reoperated), note="of all, whenever it was")
    yield Told(label="Deviation left", words=spread(report.residual), note="at distance, eso +, exo \N{MINUS SIGN}")


def _missing(results: Sequence[Result], window: Window) -> str:
    elsewhere = sum(
        bool(result.seen) and not window.visits(result) and not window.was_reoperated(result) for result in results
    )
    measured = f"; {elsewhere} of them measured at another time" if elsewhere else ""
    return f"neither seen nor operated again by then{measured}"
