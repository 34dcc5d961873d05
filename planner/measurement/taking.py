"""One direction of one reading, corrected for the way it was taken."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from planner.errors import Fault, Refused
from planner.figures import pd
from planner.optics.correction import Corrected, behind_spectacles, correct
from planner.optics.reflex import roughness
from planner.optics.technique import Technique
from planner.precision.limits import Direction
from planner.provenance import Mark, Provenance
from planner.records.examination import Correction, Examination, Range, Reading
from planner.records.technique import Arrangement, Method, Prisms
from planner.values.statement import Level, Notice, Statement

ORDINARY_NEAR = Provenance(
    mark=Mark.HOUSE_RULE,
    source="tables and near-distance rules were made from ordinary near readings, so the figure is not changed",
)


@dataclass(frozen=True, kw_only=True)
class Taken:
    """What one direction of a reading comes to; as :class:`planner.measurement.figure.Figure` says."""

    raw_pd: float
    value_pd: float
    steps: tuple[Statement, ...] = ()
    asides: tuple[Statement, ...] = ()
    notices: tuple[Notice, ...] = ()


def take(examination: Examination, place: int, direction: Direction, raw_pd: float) -> Taken:
    """The reading at ``place`` of ``examination`` in one direction; refused where it cannot be."""
    reading = examination.readings[place]
    if reading.method is Method.HIRSCHBERG:
        return Taken(raw_pd=raw_pd, value_pd=raw_pd, notices=(_rough(reading, raw_pd),))
    lens_d = _lens_d(examination, reading)
    corrected = Corrected(raw_pd=raw_pd, corrected_pd=raw_pd, steps=(), notices=())
    asides: tuple[Statement, ...] = ()
    if reading.technique is not None or lens_d:
        corrected, asides = _refusing_at(place, direction, lambda: _corrected(reading, direction, raw_pd, lens_d))
    rough = (_rough(reading, corrected.corrected_pd),) if reading.method is Method.KRIMSKY else ()
    return Taken(
        raw_pd=raw_pd,
        value_pd=corrected.corrected_pd,
        steps=corrected.steps,
        asides=asides,
        notices=(*corrected.notices, *rough),
    )


def _lens_d(examination: Examination, reading: Reading) -> float | None:
    right_d, left_d = examination.spectacles_right_d, examination.spectacles_left_d
    if reading.correction is Correction.WITHOUT or right_d is None or left_d is None:
        return None
    return (right_d + left_d) / 2


def _corrected(
    reading: Reading, direction: Direction, raw_pd: float, lens_d: float | None
) -> tuple[Corrected, tuple[Statement, ...]]:
    if reading.technique is None:
        return behind_spectacles(raw_pd, lens_d or 0.0), ()
    technique = _technique(reading.technique, direction, lens_d)
    return correct(raw_pd, technique), _near_geometry(reading, raw_pd, technique)


def _technique(prisms: Prisms, direction: Direction, lens_d: float | None) -> Technique:
    second_pd = prisms.horizontal_second_pd if direction is Direction.HORIZONTAL else prisms.vertical_second_pd
    none_named = prisms.horizontal_second_pd is None and prisms.vertical_second_pd is None
    one = second_pd is None and (prisms.arrangement is Arrangement.ONE or not none_named)
    return Technique(
        material=prisms.material,
        held=prisms.held,
        arrangement=Arrangement.ONE if one else prisms.arrangement,
        second_pd=second_pd or 0.0,
        spectacles_d=lens_d,
    )


def _near_geometry(reading: Reading, raw_pd: float, technique: Technique) -> tuple[Statement, ...]:
    held_mm = reading.technique.prism_from_cornea_mm if reading.technique else None
    if reading.range is Range.DISTANCE or held_mm is None:
        return ()
    seen = correct(raw_pd, replace(technique, prism_from_cornea_mm=held_mm))
    return (
        Statement(
            code="prism_away_at_near",
            text=(
                f"Held {held_mm:g} mm from the cornea, {pd(raw_pd)} neutralise {pd(seen.corrected_pd)} of the eye; "
                "for information, the figure stays as it was read."
            ),
            provenance=ORDINARY_NEAR,
            facts={"prism_from_cornea_mm": held_mm, "eye_pd": seen.corrected_pd},
        ),
    )


def _rough(reading: Reading, value_pd: float) -> Notice:
    rough = roughness(reading.method, value_pd, reading.range)
    return Notice(level=Level.CAUTION, code=rough.code, text=rough.text, provenance=rough.provenance, facts=rough.facts)


def _refusing_at(
    place: int, direction: Direction, corrected: Callable[[], tuple[Corrected, tuple[Statement, ...]]]
) -> tuple[Corrected, tuple[Statement, ...]]:
    try:
        return corrected()
    except Refused as refusal:
        raise Refused(*(_placed(fault, place, direction) for fault in refusal.faults)) from None


def _placed(fault: Fault, place: int, direction: Direction) -> Fault:
    reading = f"examination.readings.{place}"
    fields = {
        "second_pd": f"{reading}.technique.{direction}_second_pd",
        "held": f"{reading}.technique.held",
        "prism_from_cornea_mm": f"{reading}.technique.prism_from_cornea_mm",
        "raw_pd": f"{reading}.{direction}_pd",
    }
    return replace(fault, field=fields.get(fault.field, f"{reading}.{direction}_pd"))
