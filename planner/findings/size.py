"""How large the deviation is and in which direction, at distance and near, as far as its error lets that be told."""

from __future__ import annotations

from collections.abc import Iterator
from math import atan2, degrees

from planner.direction import direction_of
from planner.figures import inside, pd
from planner.measurement import Figure, Measurements
from planner.optics.vector import VECTOR, deviation_of
from planner.precision.limits import Direction
from planner.precision.steady import steady
from planner.precision.strength import sign_strength
from planner.provenance import Mark, Provenance
from planner.records.examination import Correction, Gaze, Range
from planner.records.technique import Condition
from planner.thresholds import same
from planner.values.proposal import Target
from planner.values.statement import Finding, Strength

AGAIN = "Measure it again; the middle one of three readings counts."


def find(measurements: Measurements, target: Target) -> Iterator[Finding]:
    """A sentence for each primary figure, distance first, with correction first, and one for both together."""
    for condition in Condition:
        for at in Range:
            for correction in Correction:
                how = (Gaze.PRIMARY, at, correction, condition)
                for figure in (measurements.horizontal(*how), measurements.vertical(*how)):
                    if figure is not None:
                        yield _finding(figure)
                        yield from _asides(figure)
    yield from _together(target)


def _finding(figure: Figure) -> Finding:
    reading, value_pd = figure.reading, figure.value_pd
    horizontal = figure.direction is Direction.HORIZONTAL
    how = f"at {reading.range} {reading.correction} correction"
    how = how if reading.condition is Condition.PLAIN else f"{how}, {reading.condition}"
    read = "" if same(value_pd, figure.raw_pd) else f" (read as {pd(figure.raw_pd)})"
    words = horizontal_words(value_pd) if horizontal else vertical_words(value_pd)
    limits_pd = figure.limits.half_width_pd
    strength = Strength.BORDERLINE if same(value_pd, 0) else sign_strength(value_pd, limits_pd)
    return Finding(
        code=f"{figure.direction}_{reading.range}",
        text=f"{words} {how}{read}.",
        provenance=Provenance(mark=Mark.MEASURED, source=f"{reading.method.words} of this examination"),
        facts={
            f"{figure.direction}_pd": value_pd,
            "raw_pd": abs(figure.raw_pd),
            "limits_pd": limits_pd,
            "correction": reading.correction.value,
            "condition": reading.condition.value,
        },
        strength=strength,
        settle="" if strength is Strength.CLEAR else AGAIN,
    )


def _asides(figure: Figure) -> Iterator[Finding]:
    for aside in figure.asides:
        yield Finding(
            code=aside.code,
            text=aside.text,
            provenance=aside.provenance,
            facts=aside.facts,
            strength=Strength.CLEAR,
            settle="",
        )


def _together(target: Target) -> Iterator[Finding]:
    horizontal_pd, vertical_pd = target.horizontal_pd, target.vertical_pd
    if vertical_pd is None or same(horizontal_pd, 0) or same(vertical_pd, 0):
        return
    deviation = deviation_of(horizontal_pd, vertical_pd)
    from_horizontal_deg = steady(degrees(atan2(abs(vertical_pd), abs(horizontal_pd))), 1)
    yield Finding(
        code="deviation_vector",
        text=(
            f"{horizontal_words(horizontal_pd)} and {inside(vertical_words(vertical_pd))} are together one deviation "
            f"of {deviation.size_pd:g} Δ, {from_horizontal_deg:g} degrees from the horizontal."
        ),
        provenance=VECTOR,
        facts={"size_pd": deviation.size_pd, "axis_deg": deviation.axis_deg},
        strength=Strength.CLEAR,
        settle="",
    )


def horizontal_words(horizontal_pd: float) -> str:
    """``Esodeviation 40 Δ``."""
    if same(horizontal_pd, 0):
        return "No horizontal deviation"
    return f"{direction_of(horizontal_pd).words.capitalize()} {pd(horizontal_pd)}"


def vertical_words(vertical_pd: float) -> str:
    """``Right hyper 6 Δ``."""
    if same(vertical_pd, 0):
        return "No vertical deviation"
    return f"{'Right' if vertical_pd > 0 else 'Left'} hyper {pd(vertical_pd)}"
