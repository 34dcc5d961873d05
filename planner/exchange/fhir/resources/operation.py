"""What was done: a Procedure, and one of its parts for each muscle."""

from __future__ import annotations

from collections.abc import Iterator
from typing import cast

from planner.exchange.fhir.concepts import concept
from planner.exchange.fhir.ledger import Ledger, Told
from planner.exchange.fhir.names import Resource, reference
from planner.exchange.fhir.resources.main import begun, notes, status, subject
from planner.exchange.fhir.resources.work import site, worked
from planner.records.operation import OperationRecord


def resources(record: Told, ledger: Ledger) -> Iterator[Resource]:
    """The operation, then its muscles; one that was left out is not done."""
    body = cast("OperationRecord", record.value)
    yield begun("Procedure", record) | {
        "basedOn": [reference("ServiceRequest", body.plan_id)],
        "status": status(record, ledger, "completed"),
        "code": concept("operation"),
        "subject": subject(record, ledger),
        "performedDateTime": body.operated_on,
        "performer": [{"actor": {"display": body.surgeon_name}}],
        **(
            {"complication": [{"text": each.complication.value} for each in body.complications]}
            if body.complications
            else {}
        ),
        **notes(body.note),
    }
    for number, muscle in enumerate(body.muscles):
        work = muscle.done or muscle.planned
        if work is None:
            continue
        yield {
            "resourceType": "Procedure",
            "id": f"{record.id}-m{number}",
            "partOf": [reference("Procedure", record.id)],
            "status": status(record, ledger, "completed" if muscle.done else "not-done"),
            "code": worked(muscle.eye, muscle.muscle, work.operation, work.mm),
            "bodySite": [site(muscle.eye, muscle.muscle)],
            "subject": subject(record, ledger),
            "performedDateTime": body.operated_on,
            **notes(muscle.reason),
        }
