"""What a dose corrects: the column read backwards."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise

from planner.tables import Column
from planner.thresholds import exceeds, same

SHARE_OF_ROW = 0.5
"""A muscle done at the amount of a row corrects half of that row's deviation (common practice)."""


class Basis(StrEnum):
    """What an effect rests on."""

    ROWS = "rows"
    BELOW_FIRST_ROW = "below the first row"
    ABOVE_LAST_ROW = "above the last row"


@dataclass(frozen=True, kw_only=True)
class Effect:
    """What one muscle is expected to correct, prism dioptres without sign."""

    pd: float
    basis: Basis


def effect_of(column: Column, mm: float, near_pd: float) -> Effect:
    """The effect of ``mm`` on one muscle.

    Where several rows print the same dose, the one nearest to ``near_pd``, the row that was asked for, is meant.
    Below the first row the effect is taken as proportional down to nothing; above the last row no more is counted than
    the last row's, for no table says that more is gained.
    """
    first_pd, first_mm = column.rows[0]
    if exceeds(first_mm, mm):
        return Effect(pd=SHARE_OF_ROW * first_pd * mm / first_mm, basis=Basis.BELOW_FIRST_ROW)
    if exceeds(mm, column.rows[-1][1]):
        return Effect(pd=SHARE_OF_ROW * column.last_pd, basis=Basis.ABOVE_LAST_ROW)
    return Effect(pd=SHARE_OF_ROW * _row_of(column, mm, near_pd), basis=Basis.ROWS)


def _row_of(column: Column, mm: float, near_pd: float) -> float:
    alike = [deviation_pd for deviation_pd, dose_mm in column.rows if same(dose_mm, mm)]
    if alike:
        return min(max(near_pd, alike[0]), alike[-1])
    for (below_pd, below_mm), (above_pd, above_mm) in pairwise(column.rows):
        if exceeds(above_mm, mm):
            return below_pd + (mm - below_mm) / (above_mm - below_mm) * (above_pd - below_pd)
    return column.last_pd
