"""A chosen operation.

It binds one version of the patient and one examination by id and digest, and its case must be that examination. Where
the device's engine is of the server's version, the server computes the plan again from the case and takes it only if
its own answer is the same; a plan of another engine version is taken as it is, with that version named in it.
Codes: ``plan_has_stop``, ``plan_differs``, ``patient_digest_differs``, ``examination_digest_differs``,
``case_differs``.
"""

from __future__ import annotations

from uuid import UUID

from clinic.people.role import Role
from clinic.sync.kinds.kind import Incoming, Kind, Theatre
from clinic.sync.known import Known
from clinic.sync.result import Rejected
from planner import plans
from planner.errors import Refused
from planner.records.examination import Examination
from planner.records.patient import Patient
from planner.records.plan import Plan
from planner.values.statement import Level
from planner.version import ENGINE_VERSION


def references(body: Plan) -> tuple[UUID, ...]:
    """The version of the patient, and the examination."""
    return UUID(body.patient_id), UUID(body.examination_id)


def check(incoming: Incoming[Plan]) -> None:
    """No stop, and the engine's own answer."""
    plan = incoming.body
    if any(notice.level is Level.STOP for notice in plan.option.notices):
        raise Rejected("plan_has_stop", "The plan carries a stop and cannot be kept.", field="body.option.notices")
    if plan.engine_version == ENGINE_VERSION:
        try:
            plans.check(plan)
        except Refused as refused:
            fault = refused.faults[0]
            text = f"The server's engine does not make this plan of its case. {fault.text}"
            raise Rejected("plan_differs", text, field="body.option") from refused


def fit(incoming: Incoming[Plan], known: Known) -> None:
    """The right patient and the right examination, unaltered."""
    plan, who = incoming.body, incoming.entry.patient
    patient = known.find(plan.patient_id, kind="patient", patient=who, where="body.patient_id")
    examination = known.find(plan.examination_id, kind="examination", patient=who, where="body.examination_id")
    if patient.digest != plan.patient_digest:
        text = "The plan was made from another content of the patient's record."
        raise Rejected("patient_digest_differs", text, field="body.patient_digest")
    if examination.digest != plan.examination_digest:
        text = "The plan was made from another content of the examination."
        raise Rejected("examination_digest_differs", text, field="body.examination_digest")
    if plan.case.examination != examination.read(Examination):
        text = "The plan's case is not the examination that it names."
        raise Rejected("case_differs", text, field="body.case.examination")
    if plan.case.born_on not in (None, patient.read(Patient).born_on):
        raise Rejected("case_differs", "The plan's case has another date of birth.", field="body.case.born_on")


KIND = Kind(
    name="plan",
    body=Plan,
    writers=frozenset({Role.SURGEON, Role.CLINIC}),
    theatre=Theatre.OF_CARDS,
    references=references,
    check=check,
    fit=fit,
)
