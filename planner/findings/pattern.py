"""A and V patterns: the horizontal deviation in up-gaze against down-gaze."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.figures import pd
from planner.precision.steady import steady
from planner.provenance import Mark, Provenance
from planner.records.examination import Examination, Gaze, Range
from planner.thresholds import reaches
from planner.values.proposal import Target
from planner.values.statement import Statement

A_FROM_PD = 10.0
V_FROM_PD = 15.0

THRESHOLDS = Provenance(
    mark=Mark.PUBLISHED, source="PMC4330283: A from 10 Δ, V from 15 Δ between up-gaze and down-gaze"
)
NOT_MEASURED = Provenance(mark=Mark.MEASURED, source="up-gaze and down-gaze are not both in this examination")


class Shape(StrEnum):
    """The letter that the deviations draw."""

    A = "A"
    V = "V"
    NONE = "none"
    UNKNOWN = "unknown"


@dataclass(frozen=True, kw_only=True)
class Pattern:
    """``down_minus_up_pd`` is the horizontal deviation (eso +) in down-gaze minus that in up-gaze, None if unknown."""

    shape: Shape
    down_minus_up_pd: float | None
    statement: Statement


def find(examination: Examination, target: Target) -> Pattern:
    """The pattern at distance, from readings with the target's correction."""
    up_pd = _horizontal_pd(examination, Gaze.UP, target)
    down_pd = _horizontal_pd(examination, Gaze.DOWN, target)
    if up_pd is None or down_pd is None:
        text = "Up-gaze and down-gaze were not both measured: an A or V pattern cannot be told."
        statement = Statement(code="pattern_not_measured", text=text, provenance=NOT_MEASURED, facts={})
        return Pattern(shape=Shape.UNKNOWN, down_minus_up_pd=None, statement=statement)
    difference_pd = steady(down_pd - up_pd, 1)
    shape = _shape(difference_pd)
    statement = Statement(
        code="pattern",
        text=_words(shape, difference_pd),
        provenance=THRESHOLDS,
        facts={"up_pd": up_pd, "down_pd": down_pd, "down_minus_up_pd": difference_pd, "shape": shape.value},
    )
    return Pattern(shape=shape, down_minus_up_pd=difference_pd, statement=statement)


def _horizontal_pd(examination: Examination, gaze: Gaze, target: Target) -> float | None:
    reading = examination.reading(gaze, Range.DISTANCE, target.reading.correction)
    return reading.horizontal_pd if reading else None


def _shape(down_minus_up_pd: float) -> Shape:
    if reaches(down_minus_up_pd, V_FROM_PD):
        return Shape.V
    return Shape.A if reaches(-down_minus_up_pd, A_FROM_PD) else Shape.NONE


def _words(shape: Shape, down_minus_up_pd: float) -> str:
    more = f"{pd(down_minus_up_pd)} more eso (less exo) in {'down' if down_minus_up_pd > 0 else 'up'}-gaze"
    if shape is Shape.NONE:
        return f"No significant A or V pattern: {more}." if down_minus_up_pd else "No A or V pattern."
    return f"{shape} pattern: {more}."
