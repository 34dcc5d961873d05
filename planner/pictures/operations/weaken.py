"""Weaken: the band is parted."""

from __future__ import annotations

from planner.pictures.brush import Brush
from planner.pictures.work import Work
from planner.values.picture import Stroke


def strokes(brush: Brush, work: Work) -> tuple[Stroke, ...]:  # noqa: ARG001 -- every operation is asked alike
    """A gap with two bars; where it lies is said in words."""
    length = brush.run.length_mm
    near, far = length * 0.34, length * 0.56
    return (
        brush.band(0.0, near),
        brush.band(far, length),
        brush.bar(near, dashed=True, weight=0.6),
        brush.bar(far, dashed=True, weight=0.6),
    )
