"""Transpose: the tendon moves across its pull; the arrow beside says where to."""

from __future__ import annotations

from planner.pictures.brush import Brush
from planner.pictures.work import Work
from planner.values.picture import Stroke


def strokes(brush: Brush, work: Work) -> tuple[Stroke, ...]:  # noqa: ARG001 -- every operation is asked alike
    """The whole band with its insertion, which is left."""
    return (brush.band(0.0, brush.run.length_mm), brush.bar(0.0, dashed=True, weight=0.6))
