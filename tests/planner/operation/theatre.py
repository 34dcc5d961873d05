"""Signed plans and what was done by them, as JSON bodies: what the desk is asked with."""

import json

from planner.canonical import digest
from planner.codec import read, write
from planner.operation import Begun, draft, review
from planner.plans import Choice, plan
from planner.records.case import Case
from planner.records.operation import OperationRecord
from planner.records.plan import Plan, Signature
from planner.signing import Attestation, sign
from planner.signing.drawing import _drawn
from planner.values.statement import Level
from tests.planner.examined import straight

PATIENT = {"schema": 1, "full_name": "Ana Example", "born_on": "2001-05-17", "hospital_number": "PP-0007"}
SURGEON = "Dr. Mira Example"
IDS = {
    name: f"0190a0b0-0000-7000-8000-{place:012d}"
    for place, name in enumerate(("patient", "examination", "plan", "signature", "operation"))
}


def signed(option, *readings, table="wright-after-parks", combine=(), aim="distance", **examination):
    """The JSON of a plan and of its signature."""
    body = {"schema": 1, "examined_on": "2026-11-02", "readings": list(readings), **examination}
    case = read(Case, {"schema": 1, "examination": body, "table": table, "combine": list(combine), "aim": aim})
    chosen = plan(
        Choice(
            case=case,
            option=option,
            patient_id=IDS["patient"],
            patient_digest=digest(PATIENT),
            examination_id=IDS["examination"],
            examination_digest=digest(body),
        )
    )
    written = write(chosen)
    cautions = [each.code for each in chosen.option.notices if each.level is Level.CAUTION]
    signature = sign(
        chosen,
        Attestation(
            plan_id=IDS["plan"],
            plan_digest=digest(written),
            drawn=tuple(map(_drawn, chosen.option.doses)),
            acknowledged=tuple(cautions),
            signer_name=SURGEON,
            signed_at="2026-11-24T09:30:00+01:00",
        ),
    )
    return written, write(signature)


ESO_40 = signed("recess-both-mr", straight(40))
ONE_EYE_40 = signed("recess-mr-resect-lr-right", straight(40))


def drafted(pieces, operated_on="2026-11-25"):
    """The record filled in from its plan."""
    plan_body, signature = pieces
    begun = Begun(
        plan=read(Plan, plan_body),
        signature=read(Signature, signature),
        signature_id=IDS["signature"],
        operated_on=operated_on,
        surgeon_name=SURGEON,
    )
    made = draft(begun, plan_digest=digest(plan_body), signature_digest=digest(signature))
    return json.loads(json.dumps(write(made)))["operation"]


def with_muscle(record, eye, muscle, **fields):
    """The record with something else said of one muscle; a muscle that it lacks is added."""
    blank = {"eye": eye, "muscle": muscle, "planned": None, "done": None}
    known = [each for each in record["muscles"] if (each["eye"], each["muscle"]) == (eye, muscle)]
    others = [each for each in record["muscles"] if each not in known]
    return record | {"muscles": [*others, (known[0] if known else blank) | fields]}


def done(operation, mm=None, offset=None):
    return {"operation": operation, "mm": mm, "offset": offset}


def reviewed(pieces, record):
    plan_body, signature = pieces
    return review(read(Plan, plan_body), read(Signature, signature), read(OperationRecord, record))


def hindrance_codes(pieces, record):
    return {fault.code: fault.field for fault in reviewed(pieces, record).hindrances}


def notice_levels(pieces, record):
    return {notice.code: notice.level.value for notice in reviewed(pieces, record).notices}
