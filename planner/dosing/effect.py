"""What a dose corrects: the column read backwards."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise

from planner.tables import Column
from planner.thresholds import exceeds, same


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

    Where a band or several rows have the same dose, what is nearest to ``near_pd``, the row that was asked for, is
    meant. Below the first row the effect is taken as proportional down to nothing; above the last row no more is
    counted than the last row's, for no table says that more is gained.
    """
    first, last = column.rows[0], column.rows[-1]
    if exceeds(first.mm, mm):
        return Effect(pd=column.share * first.least_pd * mm / first.mm, basis=Basis.BELOW_FIRST_ROW)
    if exceeds(mm, last.mm):
        return Effect(pd=column.share * last.most_pd, basis=Basis.ABOVE_LAST_ROW)
    return Effect(pd=column.share * _answered_pd(column, mm, near_pd), basis=Basis.ROWS)


def _answered_pd(column: Column, mm: float, near_pd: float) -> float:
    alike = [row for row in column.rows if same(row.mm, mm)]
    if alike:
        return min(max(near_pd, alike[0].least_pd), alike[-1].most_pd)
    for below, above in pairwise(column.rows):
        if exceeds(above.mm, mm):
            share = (mm - below.mm) / (above.mm - below.mm)
            return below.most_pd + share * (above.least_pd - below.most_pd)
    return column.rows[-1].most_pd
