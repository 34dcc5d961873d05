"""A reading as Observations, one for each direction: a size without a sign, and its direction in words."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from planner.exchange.fhir.concepts import concept, slug
from planner.exchange.fhir.names import Resource, prisms
from planner.records.examination import Examination, Reading

HORIZONTAL: Final = "deviation-horizontal"
VERTICAL: Final = "deviation-vertical"
POSITIVE: Final = {HORIZONTAL: "eso", VERTICAL: "right-hyper"}
NEGATIVE: Final = {HORIZONTAL: "exo", VERTICAL: "left-hyper"}


def deviations(examination: Examination) -> Iterator[Resource]:
    """What is told of each reading, in their order."""
    for reading in examination.readings:
        for code, figure in ((HORIZONTAL, reading.horizontal_pd), (VERTICAL, reading.vertical_pd)):
            if figure is not None:
                yield _deviation(code, figure, reading)


def _deviation(code: str, figure: float, reading: Reading) -> Resource:
    direction = "none" if figure == 0 else POSITIVE[code] if figure > 0 else NEGATIVE[code]
    parts = {
        "direction": direction,
        "gaze": slug("gaze", reading.gaze.value),
        "range": slug("range", reading.range.value),
        "correction": slug("correction", reading.correction.value),
        "method": slug("method", reading.method.value),
        "condition": slug("condition", reading.condition.value),
    }
    repeat = {"code": concept("repeat"), "valueInteger": reading.repeat}
    return {
        "code": concept(code),
        "valueQuantity": prisms(abs(figure)),
        "component": [
            *({"code": concept(part), "valueCodeableConcept": concept(value)} for part, value in parts.items()),
            repeat,
        ],
    }
