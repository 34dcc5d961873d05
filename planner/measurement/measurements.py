"""All figures of an examination."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from planner.errors import Fault, Refused
from planner.measurement.figure import Figure
from planner.measurement.taking import Taken, take
from planner.precision.agreement import Repeat, settle
from planner.precision.limits import Direction
from planner.records.examination import Correction, Examination, Gaze, Range
from planner.records.technique import Condition
from planner.values.proposal import Measure, Measured

How = tuple[Gaze, Range, Correction, Condition]
"""What a figure is found by."""


@dataclass(frozen=True, kw_only=True)
class Measurements:
    """The figures of ``examination`` in both directions, in the order in which they were first read."""

    examination: Examination
    horizontals: Mapping[How, Figure]
    verticals: Mapping[How, Figure]

    def horizontal(
        self, gaze: Gaze, at: Range, correction: Correction, condition: Condition = Condition.PLAIN
    ) -> Figure | None:
        """The horizontal deviation (eso +), None where it was not measured so."""
        return self.horizontals.get((gaze, at, correction, condition))

    def vertical(
        self, gaze: Gaze, at: Range, correction: Correction, condition: Condition = Condition.PLAIN
    ) -> Figure | None:
        """The vertical deviation (right hyper +), None where it was not measured so."""
        return self.verticals.get((gaze, at, correction, condition))

    @property
    def measured(self) -> tuple[Measured, ...]:
        """All figures as they are told: by position, in the order in which they were first read."""
        positions = dict.fromkeys((*self.horizontals, *self.verticals))
        return tuple(
            Measured(
                gaze=gaze,
                range=at,
                correction=correction,
                condition=condition,
                horizontal=_told(self.horizontals.get((gaze, at, correction, condition))),
                vertical=_told(self.verticals.get((gaze, at, correction, condition))),
            )
            for gaze, at, correction, condition in positions
        )


def _told(figure: Figure | None) -> Measure | None:
    if figure is None:
        return None
    return Measure(
        raw_pd=figure.raw_pd,
        corrected_pd=figure.value_pd,
        limits_pd=figure.limits.half_width_pd,
        readings=figure.repeats,
        steps=(*figure.steps, *figure.asides),
    )


def measure(examination: Examination) -> Measurements:
    """The figures of ``examination``; refused, all faults at once, where a reading cannot be."""
    faults: list[Fault] = []
    horizontals = _figures(examination, Direction.HORIZONTAL, faults)
    verticals = _figures(examination, Direction.VERTICAL, faults)
    if faults:
        raise Refused(*faults)
    return Measurements(
        examination=examination, horizontals=MappingProxyType(horizontals), verticals=MappingProxyType(verticals)
    )


def _figures(examination: Examination, direction: Direction, faults: list[Fault]) -> dict[How, Figure]:
    taken: dict[How, list[tuple[int, Taken]]] = {}
    for place, reading in enumerate(examination.readings):
        raw_pd = reading.horizontal_pd if direction is Direction.HORIZONTAL else reading.vertical_pd
        if raw_pd is None:
            continue
        how = (reading.gaze, reading.range, reading.correction, reading.condition)
        try:
            each = take(examination, place, direction, raw_pd)
        except Refused as refusal:
            faults += refusal.faults
        else:
            taken.setdefault(how, []).append((place, each))
    return {how: _figure(examination, direction, repeats) for how, repeats in taken.items()}


def _figure(examination: Examination, direction: Direction, taken: list[tuple[int, Taken]]) -> Figure:
    readings = examination.readings
    agreement = None
    chosen = 0
    if len(taken) > 1:
        repeats = [Repeat(value_pd=each.value_pd, method=readings[place].method) for place, each in taken]
        agreement = settle(repeats, readings[taken[0][0]].range, direction)
        chosen = agreement.chosen
    place, each = taken[chosen]
    return Figure(
        direction=direction,
        value_pd=each.value_pd,
        raw_pd=each.raw_pd,
        reading=readings[place],
        repeats=len(taken),
        steps=(*each.steps, agreement.reason) if agreement else each.steps,
        asides=each.asides,
        agreement=agreement,
        notices=(*each.notices, *agreement.notices) if agreement else each.notices,
    )
