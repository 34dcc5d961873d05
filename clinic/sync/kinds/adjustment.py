"""An adjustable suture, adjusted or tied as it was: what ends the window of an operation.

Codes: ``operation_digest_differs``, and those of :mod:`planner.operation.adjusting` and
:mod:`clinic.sync.kinds.surgeon`.
"""

from __future__ import annotations

from uuid import UUID

from clinic.people.role import Role
from clinic.sync.kinds.kind import Incoming, Kind, Theatre
from clinic.sync.kinds.surgeon import check_recorder, check_surgeon
from clinic.sync.known import Known
from clinic.sync.result import Rejected
from planner.operation.adjusting import hindrances
from planner.records.operation import Adjustment, OperationRecord


def about(body: Adjustment) -> UUID:
    """The operation whose sutures it moves."""
    return UUID(body.operation_id)


def check(incoming: Incoming[Adjustment]) -> None:
    """Nobody writes in another person's name."""
    check_recorder(incoming.body, incoming.sender)


def fit(incoming: Incoming[Adjustment], known: Known) -> None:
    """The very operation, and only sutures of it that can be adjusted."""
    body, who = incoming.body, incoming.entry.patient
    operation = known.find(body.operation_id, kind="operation", patient=who, where="body.operation_id")
    if operation.digest != body.operation_digest:
        text = "The adjustment is of another content of the operation."
        raise Rejected("operation_digest_differs", text, field="body.operation_digest")
    operated = operation.read(OperationRecord)
    older = [known.records[superseded].read(Adjustment) for superseded in incoming.entry.supersedes]
    check_surgeon(body, {operated.surgeon_name, *(each.surgeon_name for each in older)})
    for fault in hindrances(operated, body):
        raise Rejected(fault.code, fault.text, field=f"body.{fault.field}")


KIND = Kind(
    name="adjustment",
    body=Adjustment,
    writers=frozenset({Role.SURGEON}),
    theatre=Theatre.OF_CARDS,
    about=about,
    references=lambda body: (about(body),),
    check=check,
    fit=fit,
)
