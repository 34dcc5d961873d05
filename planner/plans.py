"""A chosen option made into the plan that will be signed, and a plan held against the engine again."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.errors import Fault, Refused
from planner.limits import Length, Prose
from planner.proposal import propose
from planner.records.case import Case
from planner.records.plan import Digest, Plan, RecordId
from planner.values.statement import Level
from planner.version import ENGINE_VERSION


@dataclass(frozen=True, kw_only=True)
class Choice:
    """What the surgeon chose, for which patient and by which examination record."""

    case: Case
    option: Annotated[str, Length(1, 400)]
    patient_id: RecordId
    patient_digest: Digest
    examination_id: RecordId
    examination_digest: Digest
    note: Annotated[str, Prose(0, 2000)] = ""


def plan(choice: Choice) -> Plan:
    """The plan of a choice; :class:`Refused` with ``unknown_option``, ``plan_has_stop`` or why the case is refused."""
    proposal = propose(choice.case)
    option = next((each for each in proposal.all_options if each.id == choice.option), None)
    if option is None:
        allowed = ", ".join(each.id for each in proposal.all_options)
        text = "There is no such option for this deviation."
        raise Refused(Fault(code="unknown_option", text=text, field="option", value=choice.option, allowed=allowed))
    stops = [notice for notice in option.notices if notice.level is Level.STOP]
    if stops:
        raise Refused(*(Fault(code="plan_has_stop", text=stop.text, field="option", value=stop.code) for stop in stops))
    return Plan(
        patient_id=choice.patient_id,
        patient_digest=choice.patient_digest,
        examination_id=choice.examination_id,
        examination_digest=choice.examination_digest,
        engine_version=ENGINE_VERSION,
        table=option.table or proposal.table,
        case=choice.case,
        option=option,
        note=choice.note,
    )


def check(made: Plan) -> None:
    """Raise :class:`Refused` unless this engine would make the same plan: ``other_engine`` or ``other_doses``.

    A plan travels through storage and hands before it is signed; what is signed is what the engine said, no less.
    """
    if made.engine_version != ENGINE_VERSION:
        raise Refused(
            Fault(
                code="other_engine",
                text="The plan was made by another version of the engine: plan again before signing.",
                field="plan.engine_version",
                value=made.engine_version,
                allowed=ENGINE_VERSION,
            )
        )
    proposal = propose(made.case)
    if made.option not in proposal.all_options or made.table != (made.option.table or proposal.table):
        raise Refused(
            Fault(
                code="other_doses",
                text="The plan is not what the engine makes of its own case: plan again before signing.",
                field="plan.option",
                value=made.option.id,
            )
        )
