"""Anteriorise: the insertion is brought forward to the inferior rectus."""

from __future__ import annotations

from planner.anatomy import Muscle
from planner.pictures.brush import Brush
from planner.pictures.muscles import run
from planner.pictures.work import Work
from planner.values.picture import Stroke


def strokes(brush: Brush, work: Work) -> tuple[Stroke, ...]:
    """An arrow from the old insertion to beside the temporal end of the inferior rectus insertion."""
    rectus = run(work.eye, Muscle.IR)
    ends = [rectus.at(0.4, aside) for aside in (-rectus.half(0.0) - 1.2, rectus.half(0.0) + 1.2)]
    temporal = max(ends, key=lambda place: abs(place[0]))
    return (
        brush.band(0.0, brush.run.length_mm),
        brush.bar(0.0, dashed=True, weight=0.6),
        *brush.straight(brush.run.start, temporal),
    )
