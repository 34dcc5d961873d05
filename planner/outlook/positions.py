"""The positions in which the horizontal deviation was measured as the target was."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from planner.measurement import Figure, Measurements
from planner.prediction import measurement_error
from planner.records.examination import Gaze, Range
from planner.values.proposal import Target
from planner.values.statement import Statement


@dataclass(frozen=True, kw_only=True)
class Positions:
    """``target`` first of the figures; ``errors`` are the errors of all readings, each sentence once.

    ``others_not_used``: the deviation was also measured with another correction or in another condition.
    """

    target: Figure
    distance: Figure | None
    near: Figure | None
    gazes: tuple[Figure, ...]
    errors: tuple[Statement, ...]
    others_not_used: bool


def positions(measurements: Measurements, target: Target) -> Positions | None:
    """The positions measured with the target's correction and in its condition, None without a horizontal target."""
    reading = target.reading
    aimed = measurements.horizontal(reading.gaze, reading.range, reading.correction, reading.condition)
    if aimed is None:
        return None
    alike = [
        figure
        for (_, _, correction, condition), figure in measurements.horizontals.items()
        if correction is reading.correction and condition is reading.condition
    ]
    primary = {figure.reading.range: figure for figure in alike if figure.reading.gaze is Gaze.PRIMARY}
    return Positions(
        target=aimed,
        distance=primary.get(Range.DISTANCE),
        near=primary.get(Range.NEAR),
        gazes=tuple(figure for figure in alike if figure.reading.gaze is not Gaze.PRIMARY),
        errors=_errors([aimed, *alike]),
        others_not_used=len(alike) < len(measurements.horizontals),
    )


def _errors(figures: Sequence[Figure]) -> tuple[Statement, ...]:
    said = (statement for figure in figures for statement in measurement_error(figure.limits))
    return tuple({each.text: each for each in said}.values())
