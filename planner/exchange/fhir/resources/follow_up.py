"""A visit after an operation: an Encounter whose reason is the Procedure."""

from __future__ import annotations

from collections.abc import Iterator
from typing import cast

from planner.exchange.fhir.concepts import concept
from planner.exchange.fhir.ledger import Ledger, Told
from planner.exchange.fhir.names import Resource, reference
from planner.exchange.fhir.resources.examination import AMBULATORY
from planner.exchange.fhir.resources.main import begun, status, subject
from planner.records.follow_up import FollowUp


def resources(record: Told, ledger: Ledger) -> Iterator[Resource]:
    """One Encounter; what was measured at it is the Encounter of its examination, which is a part of this one."""
    body = cast("FollowUp", record.value)
    yield begun("Encounter", record) | {
        "status": status(record, ledger, "finished"),
        "class": AMBULATORY,
        "type": [concept("visit-after", body.visit)],
        "subject": subject(record, ledger),
        "period": {"start": body.seen_on, "end": body.seen_on},
        "reasonReference": [reference("Procedure", body.operation_id)],
    }
