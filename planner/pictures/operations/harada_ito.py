"""Harada-Ito: the front half alone moves, along the band."""

from __future__ import annotations

from planner.pictures.brush import Brush
from planner.pictures.work import Work
from planner.values.picture import Stroke


def strokes(brush: Brush, work: Work) -> tuple[Stroke, ...]:  # noqa: ARG001 -- every operation is asked alike
    """The front half black for a third of the band."""
    length = brush.run.length_mm
    return (brush.band(0.0, length), brush.half_band(0.0, length * 0.4), brush.bar(0.0))
