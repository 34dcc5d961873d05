"""A visit after an operation, with the examination that was measured at it.

It speaks of the operation whatever was corrected in that record since, so it binds no content of it.
Codes: ``examination_digest_differs``, ``other_operation``, and those of :mod:`planner.followup.hindrances`.
"""

from __future__ import annotations

from uuid import UUID

from clinic.people.role import Role
from clinic.sync.kinds.kind import Incoming, Kind
from clinic.sync.known import Known
from clinic.sync.result import Rejected
from planner.followup import hindrances
from planner.records.examination import Examination
from planner.records.follow_up import FollowUp
from planner.records.operation import OperationRecord


def about(body: FollowUp) -> UUID:
    """The operation that it follows."""
    return UUID(body.operation_id)


def references(body: FollowUp) -> tuple[UUID, ...]:
    """The operation, and the examination where one was made."""
    return (about(body), *((UUID(body.examination_id),) if body.examination_id else ()))


def fit(incoming: Incoming[FollowUp], known: Known) -> None:
    """After that very operation, with the very examination, and a correction of a visit after the same operation."""
    body, who = incoming.body, incoming.entry.patient
    operation = known.find(body.operation_id, kind="operation", patient=who, where="body.operation_id")
    for superseded in incoming.entry.supersedes:
        if known.records[superseded].read(FollowUp).operation_id != body.operation_id:
            raise Rejected("other_operation", "A correction is of the same operation's visit.", field="supersedes")
    examination = _examination(body, who, known)
    for fault in hindrances(body, operation.read(OperationRecord), examination):
        raise Rejected(fault.code, fault.text, field=f"body.{fault.field}")


def _examination(body: FollowUp, who: UUID, known: Known) -> Examination | None:
    if body.examination_id is None:
        return None
    found = known.find(body.examination_id, kind="examination", patient=who, where="body.examination_id")
    if found.digest != body.examination_digest:
        text = "The visit was recorded with another content of the examination."
        raise Rejected("examination_digest_differs", text, field="body.examination_digest")
    return found.read(Examination)


KIND = Kind(
    name="follow_up",
    body=FollowUp,
    writers=frozenset({Role.SURGEON, Role.CLINIC}),
    about=about,
    references=references,
    fit=fit,
)
