"""What was measured: an Encounter, an Observation for each figure, and the ICD-10 codes that the engine suggests."""

from __future__ import annotations

from collections.abc import Iterator
from typing import cast

from planner.anatomy import Eye
from planner.errors import Refused
from planner.exchange.fhir.concepts import concept, slug
from planner.exchange.fhir.deviation import deviations
from planner.exchange.fhir.ledger import Ledger, Told
from planner.exchange.fhir.names import ICD_10, Resource, prisms, quantity, reference, term
from planner.exchange.fhir.resources.main import begun, status, subject
from planner.findings import find, target
from planner.measurement import measure
from planner.records.case import Aim
from planner.records.examination import Examination

AMBULATORY = {"system": "http://terminology.hl7.org/CodeSystem/v3-ActCode", "code": "AMB", "display": "ambulatory"}


def resources(record: Told, ledger: Ledger) -> Iterator[Resource]:
    """The Encounter first; it is a part of the visit at which it was measured, if that was one after an operation."""
    body = cast("Examination", record.value)
    visit = ledger.visits_of_examinations.get(record.id)
    yield begun("Encounter", record) | {
        "status": status(record, ledger, "finished"),
        "class": AMBULATORY,
        "type": [concept("examination", body.note[:200])],
        "subject": subject(record, ledger),
        "period": {"start": body.examined_on, "end": body.examined_on},
        **({"partOf": reference("Encounter", visit)} if visit else {}),
    }
    for number, observed in enumerate(_observed(body)):
        yield {
            "resourceType": "Observation",
            "id": f"{record.id}-o{number}",
            "status": status(record, ledger, "final"),
            "category": [term("observation-category", "exam")],
            "subject": subject(record, ledger),
            "encounter": reference("Encounter", record.id),
            "effectiveDateTime": body.examined_on,
            **observed,
        }
    yield from _suggested(record, body, ledger)


def _observed(body: Examination) -> Iterator[Resource]:
    yield from deviations(body)
    for eye, acuity in ((Eye.RIGHT, body.acuity_right), (Eye.LEFT, body.acuity_left)):
        if acuity is not None:
            yield {"code": concept("visual-acuity"), "bodySite": _eye(eye), "valueString": acuity.value}
    for eye, twist in ((Eye.RIGHT, body.excyclotorsion_right_deg), (Eye.LEFT, body.excyclotorsion_left_deg)):
        if twist is not None:
            yield _torsion(twist) | {"bodySite": _eye(eye)}
    if body.excyclotorsion_down_deg is not None:
        gaze = {"code": concept("gaze"), "valueCodeableConcept": concept("gaze-down")}
        twisted = _torsion(body.excyclotorsion_down_deg)
        yield twisted | {"component": [*cast("list[object]", twisted["component"]), gaze]}
    for eye, drift in ((Eye.RIGHT, body.dvd_right_pd), (Eye.LEFT, body.dvd_left_pd)):
        if drift is not None:
            yield {"code": concept("dissociated-vertical"), "bodySite": _eye(eye), "valueQuantity": prisms(drift)}
    for version in body.versions:
        site = f"{version.eye.capitalize()} {version.muscle.words}"
        yield {
            "code": concept("muscle-action"),
            "bodySite": concept(slug("muscle", version.muscle.value), site),
            "valueInteger": version.grade,
        }


def _eye(eye: Eye) -> Resource:
    return concept(slug("eye", eye.value))


def _torsion(degrees: float) -> Resource:
    way = "none" if degrees == 0 else "excyclo" if degrees > 0 else "incyclo"
    return {
        "code": concept("torsion"),
        "valueQuantity": quantity(abs(degrees), "deg", "degree"),
        "component": [{"code": concept("direction"), "valueCodeableConcept": concept(way)}],
    }


def _suggested(record: Told, body: Examination, ledger: Ledger) -> Iterator[Resource]:
    """What the engine suggests; nothing where it refuses the readings."""
    try:
        measurements = measure(body)
        statements = find(measurements, target(measurements, Aim.DISTANCE)).statements
    except Refused:
        return
    for number, each in enumerate(each for each in statements if each.code == "icd10"):
        code, title = each.facts["icd10"], each.facts["title"]
        yield {
            "resourceType": "Condition",
            "id": f"{record.id}-c{number}",
            "verificationStatus": term("condition-ver-status", status(record, ledger, "provisional")),
            "category": [term("condition-category", "encounter-diagnosis")],
            "code": {"coding": [{"system": ICD_10, "code": code, "display": title}], "text": each.text},
            "subject": subject(record, ledger),
            "encounter": reference("Encounter", record.id),
            "recordedDate": body.examined_on,
        }
