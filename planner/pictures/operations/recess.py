"""Recess: the band starts further back; its old insertion stays as a broken line."""

from __future__ import annotations

from planner.pictures.brush import Brush
from planner.pictures.work import Work
from planner.values.picture import Stroke

WITHOUT_A_FIGURE_MM = 8.0
REST_MM = 3.0
"""At least so much of the muscle is drawn behind its new attachment."""


def strokes(brush: Brush, work: Work) -> tuple[Stroke, ...]:
    """To scale on a rectus."""
    back = WITHOUT_A_FIGURE_MM if work.mm is None else work.mm
    end = max(brush.run.length_mm, back + REST_MM)
    return (
        brush.band(back, end),
        brush.bar(0.0, dashed=True, weight=0.6),
        brush.bar(back),
        *brush.arrow(0.6, back - 0.6),
    )
