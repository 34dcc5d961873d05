"""Reading a column of doses."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from planner.tables import Column, Row
from planner.thresholds import exceeds, same


@dataclass(frozen=True, kw_only=True)
class Amount:
    """``mm`` before rounding, and the rows it stands between; on a row, in a band or at the last row both are that."""

    mm: float
    below: Row
    above: Row

    @property
    def is_between(self) -> bool:
        """Whether it was interpolated."""
        return self.below != self.above


def amount_at(column: Column, row_pd: float) -> Amount | None:
    """The amount for a deviation; the last row's above the column, None below its first row.

    Between two bands the lower one holds.
    """
    if exceeds(column.first_pd, row_pd):
        return None
    for below, above in pairwise(column.rows):
        if not same(row_pd, above.first_pd) and row_pd < above.first_pd:
            return _on(below) if column.is_banded or same(row_pd, below.first_pd) else _between(below, above, row_pd)
    return _on(column.rows[-1])


def _on(row: Row) -> Amount:
    return Amount(mm=row.mm, below=row, above=row)


def _between(below: Row, above: Row, row_pd: float) -> Amount:
    share = (row_pd - below.last_pd) / (above.first_pd - below.last_pd)
    return Amount(mm=below.mm + share * (above.mm - below.mm), below=below, above=above)
