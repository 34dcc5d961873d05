"""What was done in theatre by a signed plan.

Only surgeons write it: it says what they did. The engine holds it against the stored plan again, so that what differs
has its reason and no muscle of the plan is passed over. A plan that was replaced or taken back since keeps nobody from
writing down what was done by it.
The surgeon is who holds the account, or the one who signed and then who wrote it down stands beside.
Codes: ``signature_digest_differs``, ``plan_digest_differs``, ``other_signature``, and those of
:mod:`planner.operation.hindrances` and :mod:`clinic.sync.kinds.surgeon`.
"""

from __future__ import annotations

from uuid import UUID

from clinic.people.role import Role
from clinic.sync.kinds.kind import Incoming, Kind, Theatre
from clinic.sync.kinds.surgeon import check_recorder, check_surgeon
from clinic.sync.known import Known
from clinic.sync.result import Rejected
from planner.operation import hindrances
from planner.records.operation import OperationRecord
from planner.records.plan import Plan, Signature


def about(body: OperationRecord) -> UUID:
    """The signature that it was done by."""
    return UUID(body.signature_id)


def references(body: OperationRecord) -> tuple[UUID, ...]:
    """The signature, and the plan."""
    return about(body), UUID(body.plan_id)


def check(incoming: Incoming[OperationRecord]) -> None:
    """Nobody writes in another person's name."""
    check_recorder(incoming.body, incoming.sender)


def fit(incoming: Incoming[OperationRecord], known: Known) -> None:
    """The very plan and signature, a correction of the same operation, and nothing that hinders it."""
    record, who = incoming.body, incoming.entry.patient
    signature = known.find(record.signature_id, kind="signature", patient=who, where="body.signature_id")
    plan = known.find(record.plan_id, kind="plan", patient=who, where="body.plan_id")
    if signature.digest != record.signature_digest:
        text = "The operation was done by another content of the signature."
        raise Rejected("signature_digest_differs", text, field="body.signature_digest")
    if plan.digest != record.plan_digest:
        text = "The operation was done by another content of the plan."
        raise Rejected("plan_digest_differs", text, field="body.plan_digest")
    signed = signature.read(Signature)
    older = [known.records[superseded].read(OperationRecord) for superseded in incoming.entry.supersedes]
    if any(each.signature_id != record.signature_id for each in older):
        raise Rejected("other_signature", "A correction is of the same operation.", field="supersedes")
    check_surgeon(record, {signed.signer_name, *(each.surgeon_name for each in older)})
    for fault in hindrances(plan.read(Plan), signed, record):
        raise Rejected(fault.code, fault.text, field=f"body.{fault.field}")


KIND = Kind(
    name="operation",
    body=OperationRecord,
    writers=frozenset({Role.SURGEON}),
    theatre=Theatre.OF_CARDS,
    about=about,
    references=references,
    check=check,
    fit=fit,
)
