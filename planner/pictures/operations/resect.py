"""Resect: a piece at the front is crossed out, and what is left comes forward."""

from __future__ import annotations

from planner.pictures.brush import Brush
from planner.pictures.work import Work
from planner.values.picture import Fill, Stroke

WITHOUT_A_FIGURE_MM = 6.0


def strokes(brush: Brush, work: Work) -> tuple[Stroke, ...]:
    """To scale on a rectus."""
    taken = WITHOUT_A_FIGURE_MM if work.mm is None else work.mm
    end = max(brush.run.length_mm, taken + 5.0)
    return (
        brush.band(taken, end),
        brush.band(0.0, taken, fill=Fill.PAGE),
        *brush.crosses(0.0, taken),
        brush.bar(0.0),
        brush.bar(taken, weight=0.6),
        *brush.arrow(end, taken + 0.8),
    )
