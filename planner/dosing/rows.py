"""Reading a column of a dose table."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from planner.tables import Column
from planner.thresholds import exceeds, same

Row = tuple[float, float]


@dataclass(frozen=True, kw_only=True)
class Amount:
    """``mm`` before rounding, and the rows it stands between; on a row or at the last one both are that row."""

    mm: float
    below: Row
    above: Row

    @property
    def is_between(self) -> bool:
        """Whether it was interpolated."""
        return self.below != self.above


def amount_at(column: Column, row_pd: float) -> Amount | None:
    """The amount for a deviation; the last row's above the column, None below its first row."""
    if exceeds(column.first_pd, row_pd):
        return None
    for below, above in pairwise(column.rows):
        if same(row_pd, below[0]) or row_pd < below[0]:
            return Amount(mm=below[1], below=below, above=below)
        if exceeds(above[0], row_pd):
            share = (row_pd - below[0]) / (above[0] - below[0])
            return Amount(mm=below[1] + share * (above[1] - below[1]), below=below, above=above)
    last = column.rows[-1]
    return Amount(mm=last[1], below=last, above=last)
