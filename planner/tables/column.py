"""A column of figures: the doses of one operation by deviation."""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple


class Row(NamedTuple):
    """``mm`` per muscle for a deviation from ``first_pd`` to ``last_pd``; the two are one for a row of one figure.

    ``least_pd`` to ``most_pd`` is what the row's dose answers: the deviation itself, or what was measured afterwards.
    ``up_to_mm`` is the larger end where print gives a range of doses, else ``mm``.
    """

    first_pd: float
    last_pd: float
    mm: float
    up_to_mm: float
    least_pd: float
    most_pd: float

    @property
    def is_band(self) -> bool:
        """Whether the row stands for a range of deviations."""
        return self.last_pd > self.first_pd


def row(deviation_pd: float, mm: float, to_pd: float | None = None) -> Row:
    """A row whose dose answers the deviation that it stands for."""
    last_pd = deviation_pd if to_pd is None else to_pd
    return Row(deviation_pd, last_pd, mm, mm, deviation_pd, last_pd)


@dataclass(frozen=True, kw_only=True)
class Column:
    """``rows`` rise in deviation and dose; ``heading`` says what is done.

    ``share`` is the part of a row's effect that one muscle has. Nothing is interpolated between ``is_banded`` rows.
    """

    heading: str
    rows: tuple[Row, ...]
    share: float
    is_banded: bool

    @property
    def first_pd(self) -> float:
        """The smallest deviation that has a dose."""
        return self.rows[0].first_pd

    @property
    def last_pd(self) -> float:
        """The largest deviation that has a dose."""
        return self.rows[-1].last_pd
