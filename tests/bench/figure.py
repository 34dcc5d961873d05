"""One line of the table: what was measured, how often, and what it should be."""

from __future__ import annotations

import statistics
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass


@dataclass(frozen=True, kw_only=True)
class Figure:
    """``values`` are in ``unit``; ``aim`` is the most that is wanted, in the same unit; ``compared`` names a ratio."""

    what: str
    unit: str
    values: Sequence[float]
    aim: float | None = None
    compared: str = ""

    @property
    def median(self) -> float:
        return statistics.median(self.values)


def times(of: str, figure: Figure, other: Figure) -> Figure:
    """``figure`` with its ratio to ``other`` beside it; both were measured in one run."""
    ratio = f"{figure.median / other.median:.1f} x {of}"
    return Figure(what=figure.what, unit=figure.unit, values=figure.values, aim=figure.aim, compared=ratio)


def timed_ms(work: Callable[[], object], *, runs: int) -> list[float]:
    """How long each run took, after one that is not counted."""
    work()
    return [_once_ms(work) for _ in range(runs)]


def _once_ms(work: Callable[[], object]) -> float:
    started = time.perf_counter()
    work()
    return (time.perf_counter() - started) * 1000
