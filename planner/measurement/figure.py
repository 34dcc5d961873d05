"""One direction of one thing that was measured."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from planner.precision.agreement import Agreement
from planner.precision.limits import Direction, Limits, limits_of
from planner.records.examination import Reading
from planner.values.statement import Notice, Statement


@dataclass(frozen=True, kw_only=True)
class Figure:
    """``value_pd`` is corrected and settled, ``raw_pd`` as it was read; both signed (eso +, right hyper +).

    ``steps`` lead from raw to corrected and say why this one of several readings counts; ``asides`` are told and change
    nothing. ``repeats`` counts the readings; ``agreement`` is None for a single one.
    """

    direction: Direction
    value_pd: float
    raw_pd: float
    reading: Reading
    repeats: int = 1
    steps: tuple[Statement, ...] = ()
    asides: tuple[Statement, ...] = ()
    agreement: Agreement | None = None
    notices: tuple[Notice, ...] = ()

    @cached_property
    def limits(self) -> Limits:
        """The error of one such reading."""
        return limits_of(self.value_pd, self.reading.range, method=self.reading.method, direction=self.direction)
