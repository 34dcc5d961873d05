"""Records that FHIR has no resource for: a Basic that carries them, so that nothing is lost."""

from __future__ import annotations

from collections.abc import Iterator

from planner.exchange.fhir.concepts import concept, slug
from planner.exchange.fhir.ledger import Ledger, Told
from planner.exchange.fhir.names import Resource
from planner.exchange.fhir.resources.main import begun, subject


def resources(record: Told, ledger: Ledger) -> Iterator[Resource]:
    """One Basic; with its patient where it is about one."""
    of_patient = record.envelope.patient in ledger.present_patients
    yield begun("Basic", record) | {
        "code": concept(slug("record", record.kind)),
        **({"subject": subject(record, ledger)} if of_patient else {}),
        "created": record.envelope.recorded_at[:10],
    }
