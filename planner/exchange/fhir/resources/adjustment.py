"""An adjustment of a suture: a Procedure that is part of the operation."""

from __future__ import annotations

from collections.abc import Iterator
from typing import cast

from planner.exchange.fhir.concepts import concept
from planner.exchange.fhir.ledger import Ledger, Told
from planner.exchange.fhir.names import Resource, reference
from planner.exchange.fhir.resources.main import begun, notes, status, subject
from planner.figures import mm
from planner.records.operation import Adjustment, MovedMuscle


def resources(record: Told, ledger: Ledger) -> Iterator[Resource]:
    """One Procedure that says what was moved."""
    body = cast("Adjustment", record.value)
    moved = "; ".join(map(_moved, body.moved)) or "Nothing moved"
    yield begun("Procedure", record) | {
        "partOf": [reference("Procedure", body.operation_id)],
        "status": status(record, ledger, "completed"),
        "code": concept("adjustment", moved),
        "subject": subject(record, ledger),
        "performedDateTime": body.adjusted_at,
        "performer": [{"actor": {"display": body.surgeon_name}}],
        **notes(body.note),
    }


def _moved(each: MovedMuscle) -> str:
    return f"{each.eye.capitalize()} {each.muscle.words}: {each.way} {mm(each.mm)}"
