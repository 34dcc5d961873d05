"""What every main resource begins with, and how it says that it no longer counts."""

from __future__ import annotations

from planner.exchange.fhir.carrying import carried
from planner.exchange.fhir.ledger import Ledger, Told
from planner.exchange.fhir.names import PATIENT, RECORD_ID, Resource, reference

IN_ERROR = "entered-in-error"


def begun(kind: str, record: Told) -> Resource:
    """Type, id, the record itself and its identifier."""
    return {
        "resourceType": kind,
        "id": record.id,
        "extension": [carried(record)],
        "identifier": [{"system": RECORD_ID, "value": record.id}],
    }


def subject(record: Told, ledger: Ledger) -> Resource:
    """The patient that a record is about, as the present record names them."""
    return reference(PATIENT, ledger.patient_of(record))


def status(record: Told, ledger: Ledger, standing: str) -> str:
    """``standing``, unless the record was replaced or taken back."""
    return standing if ledger.stands(record.id) else IN_ERROR


def notes(text: str) -> Resource:
    """A note, where there is one."""
    return {"note": [{"text": text}]} if text else {}
