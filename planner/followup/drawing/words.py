"""A deviation in words: its direction is a word, never a sign."""

from __future__ import annotations

from planner.figures import pd
from planner.precision.limits import Direction
from planner.thresholds import same

DIRECTIONS = {Direction.HORIZONTAL: ("eso", "exo"), Direction.VERTICAL: ("right hyper", "left hyper")}
"""First the positive one."""


def deviation(direction: Direction, value_pd: float) -> str:
    """``eso 12 Δ``, or ``none``."""
    if same(round(value_pd, 1), 0.0):
        return "none"
    positive, negative = DIRECTIONS[direction]
    return f"{positive if value_pd > 0 else negative} {pd(value_pd)}"
