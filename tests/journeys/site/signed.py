"""Patients of the demo clinic once more, entered and signed anew: for a journey that needs one to itself."""

from __future__ import annotations

from typing import Any

from tests.clinic.pen import Pen
from tests.journeys.people import DEMO

Raw = dict[str, Any]
BY_ID: dict[str, Raw] = {record["id"]: record for record in DEMO["records"]}


def once_more(pen: Pen, name: str, *, full_name: str, hospital_number: str) -> list[Raw]:
    """What ``name`` was measured with and how that was planned and signed, for somebody else.

    Patient, examination, plan and signature, in this order.
    """
    planned = BY_ID[_signature_of(name)["body"]["plan_id"]]["body"]
    known, measured = BY_ID[planned["patient_id"]]["body"], BY_ID[planned["examination_id"]]["body"]
    patient = pen.record("patient", None, known | {"full_name": full_name, "hospital_number": hospital_number})
    examination = pen.record("examination", patient["patient"], measured)
    about = {
        "patient_id": patient["id"],
        "patient_digest": patient["digest"],
        "examination_id": examination["id"],
        "examination_digest": examination["digest"],
    }
    plan = pen.record("plan", patient["patient"], planned | about)
    return [patient, examination, plan, pen.signature(plan)]


def _signature_of(name: str) -> Raw:
    (patient,) = {each["patient"] for each in DEMO["records"] if each["body"].get("full_name") == name}
    return next(each for each in DEMO["records"] if each["kind"] == "signature" and each["patient"] == patient)
