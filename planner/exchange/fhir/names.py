"""Addresses: our own, under a name that can never be somebody else's, and those of open code systems."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

Resource = dict[str, object]
"""A FHIR resource or a part of one, as JSON."""
Made = Mapping[tuple[str, str], Resource]
"""Resources by their type and id."""

BASE: Final = "https://primary-position.example/fhir"
CODES: Final = f"{BASE}/CodeSystem/strabismus"
RECORD: Final = f"{BASE}/StructureDefinition/ledger-record"
AMOUNT: Final = f"{BASE}/StructureDefinition/amount"
EYE: Final = f"{BASE}/StructureDefinition/eye"
MUSCLE: Final = f"{BASE}/StructureDefinition/muscle"
HOSPITAL_NUMBER: Final = f"{BASE}/identifier/hospital-number"
RECORD_ID: Final = f"{BASE}/identifier/record"
BUNDLE_ID: Final = f"{BASE}/identifier/export"

UCUM: Final = "http://unitsofmeasure.org"
ICD_10: Final = "http://hl7.org/fhir/sid/icd-10"
TERMS: Final = "http://terminology.hl7.org/CodeSystem"

PRISM_DIOPTRE: Final = "[p'diop]"
PATIENT: Final = "Patient"


def reference(kind: str, resource_id: str) -> Resource:
    """A reference within the Bundle."""
    return {"reference": f"{kind}/{resource_id}"}


def full_url(kind: str, resource_id: str) -> str:
    """The address of a resource, which relative references are resolved against."""
    return f"{BASE}/{kind}/{resource_id}"


def quantity(value: float, code: str, unit: str) -> Resource:
    """A figure with its UCUM unit."""
    return {"value": value, "unit": unit, "system": UCUM, "code": code}


def prisms(value: float) -> Resource:
    """Prism dioptres."""
    return quantity(value, PRISM_DIOPTRE, "prism dioptre")


def millimetres(value: float) -> Resource:
    """Millimetres."""
    return quantity(value, "mm", "mm")


def term(system: str, code: str) -> Resource:
    """A concept of one of HL7's own code systems."""
    return {"coding": [{"system": f"{TERMS}/{system}", "code": code}]}
