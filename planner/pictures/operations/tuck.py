"""Tuck: the tendon is folded on itself."""

from __future__ import annotations

from planner.pictures.brush import Brush
from planner.pictures.work import Work
from planner.values.picture import Stroke


def strokes(brush: Brush, work: Work) -> tuple[Stroke, ...]:  # noqa: ARG001 -- every operation is asked alike
    """A fold between two bars; how much is said in words."""
    length = brush.run.length_mm
    near, far = length * 0.28, length * 0.52
    return (
        brush.band(0.0, length),
        brush.bar(near, weight=0.6),
        brush.bar(far, weight=0.6),
        brush.zigzag(near, far),
    )
