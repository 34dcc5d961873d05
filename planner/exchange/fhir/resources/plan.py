"""The plan: a ServiceRequest, an order once it is signed."""

from __future__ import annotations

from collections.abc import Iterator
from typing import cast

from planner.exchange.fhir.concepts import concept
from planner.exchange.fhir.ledger import Ledger, Told
from planner.exchange.fhir.names import Resource, reference
from planner.exchange.fhir.resources.main import begun, notes, subject
from planner.exchange.fhir.resources.work import worked
from planner.records.operation import OperationRecord
from planner.records.plan import Plan, Signature


def resources(record: Told, ledger: Ledger) -> Iterator[Resource]:
    """One ServiceRequest, whose details are the muscles."""
    body = cast("Plan", record.value)
    option = body.option
    signed = any(each.plan_id == record.id and ledger.stands(told.id) for told, each in ledger.of_kind(Signature))
    yield begun("ServiceRequest", record) | {
        "status": _status(record, ledger, signed=signed),
        "intent": "order" if signed else "plan",
        "code": concept("planned-operation", option.title),
        "orderDetail": [worked(each.eye, each.muscle, each.operation, each.mm) for each in option.doses],
        "subject": subject(record, ledger),
        "authoredOn": record.envelope.recorded_at,
        "requester": {"display": record.envelope.author},
        "supportingInfo": [reference("Encounter", body.examination_id)],
        **notes(body.note),
    }


def _status(record: Told, ledger: Ledger, *, signed: bool) -> str:
    if not ledger.stands(record.id):
        return "revoked"
    done = any(each.plan_id == record.id and ledger.stands(told.id) for told, each in ledger.of_kind(OperationRecord))
    return "completed" if done else "active" if signed else "draft"
