"""Work on one muscle as a coded phrase with eye, muscle and millimetres beside it."""

from __future__ import annotations

from planner.anatomy import Eye, Muscle
from planner.exchange.fhir.concepts import concept, slug
from planner.exchange.fhir.names import AMOUNT, EYE, MUSCLE, Resource, millimetres
from planner.figures import mm
from planner.values.option import Operation


def worked(eye: Eye, muscle: Muscle, operation: Operation, amount_mm: float | None) -> Resource:
    """``Right medial rectus: recess 5 mm``, coded by the operation."""
    words = operation.words if amount_mm is None else f"{operation.words} {mm(amount_mm)}"
    return {
        "extension": [
            {"url": EYE, "valueCode": eye.value},
            {"url": MUSCLE, "valueCode": muscle.value},
            *([] if amount_mm is None else [{"url": AMOUNT, "valueQuantity": millimetres(amount_mm)}]),
        ],
        **concept(slug("operation", operation.value), f"{eye.capitalize()} {muscle.words}: {words}"),
    }


def site(eye: Eye, muscle: Muscle) -> Resource:
    """Where: the eye and its muscle."""
    return concept(slug("muscle", muscle.value), f"{eye.capitalize()} {muscle.words}")
