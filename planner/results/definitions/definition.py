"""What a definition of success is."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from planner.provenance import Provenance
from planner.results.definitions.verdict import Verdict
from planner.results.result import Result, Seen
from planner.results.window import Window

Judge = Callable[[Result, Window], Verdict]


@dataclass(frozen=True, kw_only=True)
class Definition:
    """``concerns`` says of which results it speaks, ``judge`` what it makes of one, in the window asked for.

    ``differences`` says in what it is not as published, where what is recorded does not allow that.
    """

    id: str
    words: str
    provenance: Provenance
    concerns: Callable[[Result], bool]
    judge: Judge
    differences: tuple[str, ...] = ()


def everybody(_result: Result) -> bool:
    """A definition for every operation."""
    return True


def at_last_visit(met: Callable[[Seen], bool]) -> Judge:
    """Who was operated again by the last day of the window failed; the last visit in it tells of the others."""

    def judge(result: Result, window: Window) -> Verdict:
        if window.was_reoperated(result):
            return Verdict.REOPERATED
        visit = window.last_visit(result)
        if visit is None:
            return Verdict.MISSING
        return Verdict.MET if met(visit) else Verdict.FAILED

    return judge
