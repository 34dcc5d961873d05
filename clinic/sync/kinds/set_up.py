"""How one operation is set up: the surgeon's wishes and departures from the rules, about one plan.

The server has the engine decide every item again with the practice that the record names, so that no choice enters
that a stop forbids. Codes: ``plan_digest_differs``, and those of :func:`planner.setup.check_overrides`.
"""

from __future__ import annotations

from uuid import UUID

from clinic.people.role import Role
from clinic.sync.kinds.kind import Incoming, Kind, Theatre
from clinic.sync.known import Known, Reference
from clinic.sync.result import Rejected
from planner import setup
from planner.errors import Refused
from planner.records.patient import Patient
from planner.records.plan import Plan
from planner.records.practice import Practice
from planner.records.set_up import SetUp


def about(body: SetUp) -> UUID:
    """The plan."""
    return UUID(body.plan_id)


def references(body: SetUp) -> tuple[UUID, ...]:
    """The plan, and the clinic's practice where there was one."""
    return (about(body), *((UUID(body.practice_id),) if body.practice_id else ()))


def fit(incoming: Incoming[SetUp], known: Known) -> None:
    """The plan is known and the very one, and the engine makes the sheet."""
    body = incoming.body
    plan = known.find(body.plan_id, kind="plan", patient=incoming.entry.patient, where="body.plan_id")
    if plan.digest != body.plan_digest:
        text = "The set-up was made for another content of the plan."
        raise Rejected("plan_digest_differs", text, field="body.plan_digest")
    practice = _practice(body, known)
    planned = plan.read(Plan)
    born_on = planned.case.born_on or known.require(incoming.entry.patient).read(Patient).born_on
    try:
        setup.check_overrides(planned, born_on, body, practice.read(Practice) if practice else None)
    except Refused as refused:
        fault = refused.faults[0]
        raise Rejected(fault.code, fault.text, field=f"body.{fault.field}") from refused


def _practice(body: SetUp, known: Known) -> Reference | None:
    if body.practice_id is None:
        return None
    named = known.records.get(UUID(body.practice_id))
    owner = named.patient if named else UUID(body.practice_id)
    return known.find(body.practice_id, kind="practice", patient=owner, where="body.practice_id")


KIND = Kind(
    name="set_up",
    body=SetUp,
    writers=frozenset({Role.SURGEON}),
    theatre=Theatre.OF_CARDS,
    about=about,
    references=references,
    fit=fit,
)
