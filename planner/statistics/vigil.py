"""A watch over failures, case by case: the log-likelihood-ratio CUSUM, and how often it errs.

Steiner, Cook, Farewell and Treasure, Biostatistics 2000;1:441-52: each case adds the logarithm of how much likelier its
result is when failures are as frequent as must not be (``worse``) than when they are as expected; the sum never falls
below zero; at ``limit`` it calls. Run lengths by a Markov chain of the sum's states: Brook and Evans, Biometrika
1972;59:539-49.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cache
from math import log
from typing import Final

STATES: Final = 120


@dataclass(frozen=True, kw_only=True)
class Vigil:
    """``expected`` and ``worse`` are shares of failures, 0 < expected < worse < 1."""

    expected: float
    worse: float
    limit: float

    def __post_init__(self) -> None:
        if not 0 < self.expected < self.worse < 1 or self.limit <= 0:
            raise ValueError(f"0 < {self.expected} < {self.worse} < 1 and {self.limit} > 0 do not hold")

    def weight(self, *, failed: bool) -> float:
        """What one case adds."""
        if failed:
            return log(self.worse / self.expected)
        return log((1 - self.worse) / (1 - self.expected))


@dataclass(frozen=True, kw_only=True)
class RunLengths:
    """How many cases pass on average until it calls: falsely, and when failures are as frequent as ``worse``."""

    false_call_cases: float
    true_call_cases: float


def watch(vigil: Vigil, failures: Iterable[bool]) -> tuple[float, ...]:
    """The sum after each case, in the order of the operations; it starts again at zero after a call."""
    level = 0.0
    levels: list[float] = []
    for failed in failures:
        level = max(0.0, (0.0 if level >= vigil.limit else level) + vigil.weight(failed=failed))
        levels.append(level)
    return tuple(levels)


@cache
def run_lengths(vigil: Vigil) -> RunLengths:
    """The average run lengths from zero, to the fineness of :data:`STATES` states."""
    return RunLengths(
        false_call_cases=_run_length(vigil, vigil.expected), true_call_cases=_run_length(vigil, vigil.worse)
    )


def _run_length(vigil: Vigil, failures: float) -> float:
    width = 2 * vigil.limit / (2 * STATES - 1)
    rows: list[list[float]] = []
    for state in range(STATES):
        row = [0.0] * (STATES + 1)
        row[state] += 1.0
        row[STATES] = 1.0
        for failed, chance in ((True, failures), (False, 1 - failures)):
            for place, share in _reached(state + vigil.weight(failed=failed) / width):
                if place < STATES:
                    row[place] -= chance * share
        rows.append(row)
    return _solve(rows)[0]


def _reached(place: float) -> Sequence[tuple[int, float]]:
    """The states beside a place between two of them, each with its share, so that the mean is kept."""
    if place <= 0:
        return ((0, 1.0),)
    below = int(place)
    return ((below, 1 - (place - below)), (below + 1, place - below))


def _solve(rows: list[list[float]]) -> list[float]:
    """Gaussian elimination within the band; the matrix is diagonally dominant, so no rows need to change places."""
    size = len(rows)
    below, above = _band(rows)
    for pivot in range(size):
        top = rows[pivot]
        columns = (*range(pivot, min(size, pivot + above + 1)), size)
        for row in rows[pivot + 1 : pivot + below + 1]:
            factor = row[pivot] / top[pivot]
            if factor:
                for column in columns:
                    row[column] -= factor * top[column]
    values = [0.0] * size
    for place in range(size - 1, -1, -1):
        known = sum(rows[place][later] * values[later] for later in range(place + 1, min(size, place + above + 1)))
        values[place] = (rows[place][size] - known) / rows[place][place]
    return values


def _band(rows: Sequence[Sequence[float]]) -> tuple[int, int]:
    """How far the figures reach below and above the diagonal."""
    offsets = [
        column - place for place, row in enumerate(rows) for column, figure in enumerate(row[: len(rows)]) if figure
    ]
    return -min(offsets), max(offsets)
