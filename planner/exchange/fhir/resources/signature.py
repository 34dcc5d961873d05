"""The signature under a plan: a Provenance whose agent is the signer; of the card only its check word is told."""

from __future__ import annotations

from collections.abc import Iterator
from typing import cast

from planner.exchange.fhir.carrying import carried
from planner.exchange.fhir.ledger import Ledger, Told
from planner.exchange.fhir.names import Resource, reference, term
from planner.records.plan import Signature


def resources(record: Told, _ledger: Ledger) -> Iterator[Resource]:
    """One Provenance of the plan's ServiceRequest."""
    body = cast("Signature", record.value)
    yield {
        "resourceType": "Provenance",
        "id": record.id,
        "extension": [carried(record)],
        "target": [reference("ServiceRequest", body.plan_id)],
        "occurredDateTime": body.signed_at,
        "recorded": record.envelope.recorded_at,
        "activity": {"text": f"Signed; check word {body.check_word}"},
        "agent": [{"type": term("provenance-participant-type", "verifier"), "who": {"display": body.signer_name}}],
    }
