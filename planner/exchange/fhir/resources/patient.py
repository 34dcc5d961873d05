"""Who the patient is: a Patient, and the allergies as they were written."""

from __future__ import annotations

from collections.abc import Iterator
from typing import cast

from planner.exchange.fhir.ledger import Ledger, Told
from planner.exchange.fhir.names import HOSPITAL_NUMBER, PATIENT, Resource, reference, term
from planner.exchange.fhir.resources.main import IN_ERROR, begun
from planner.records.patient import Patient


def resources(record: Told, ledger: Ledger) -> Iterator[Resource]:
    """A Patient; a version that was replaced is not active and names its successor."""
    body = cast("Patient", record.value)
    main = begun(PATIENT, record)
    identifiers = [{"use": "official", "system": HOSPITAL_NUMBER, "value": body.hospital_number}]
    present = ledger.patient_of(record)
    yield main | {
        "identifier": [*identifiers, *cast("list[object]", main["identifier"])],
        "active": ledger.stands(record.id),
        "name": [{"use": "official", "text": body.full_name}],
        "gender": body.sex.value,
        "birthDate": body.born_on,
        **({} if present == record.id else {"link": [{"other": reference(PATIENT, present), "type": "replaced-by"}]}),
    }
    if body.allergies:
        yield _allergy(record, body, ledger)


def _allergy(record: Told, body: Patient, ledger: Ledger) -> Resource:
    standing = ledger.stands(record.id)
    return {
        "resourceType": "AllergyIntolerance",
        "id": f"{record.id}-allergies",
        **({"clinicalStatus": term("allergyintolerance-clinical", "active")} if standing else {}),
        "verificationStatus": term("allergyintolerance-verification", "unconfirmed" if standing else IN_ERROR),
        "code": {"text": body.allergies},
        "patient": reference(PATIENT, record.id),
        "recordedDate": record.envelope.recorded_at,
    }
