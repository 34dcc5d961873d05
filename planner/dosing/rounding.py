"""Rounding to the half millimetre."""

from __future__ import annotations

from math import floor

from planner.provenance import Mark, Provenance
from planner.thresholds import HAIR, exceeds

STEP_MM = 0.5
TIE = 0.5

PROVENANCE = Provenance(
    mark=Mark.HOUSE_RULE, source="to the nearest 0.5 mm; a figure halfway between two goes to the smaller dose"
)


def to_half_mm(mm: float) -> float:
    """``mm`` to the nearest half millimetre; a tie goes to the smaller dose."""
    halves = floor(mm / STEP_MM + HAIR)
    rest = mm / STEP_MM - halves
    return STEP_MM * (halves + 1 if exceeds(rest, TIE) else halves)
