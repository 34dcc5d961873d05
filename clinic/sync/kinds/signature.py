"""The surgeon's signature under a plan.

The engine signs the stored plan again with what the record says was drawn and acknowledged; anything but the same
signature is refused. It does so whichever version of the engine made the plan: what was signed stays signed. A plan
that was replaced or taken back can no longer be signed.
Codes: ``plan_digest_differs``, ``signer_differs``, ``plan_superseded``, ``signature_differs``, and those of
:mod:`planner.signing`.
"""

from __future__ import annotations

from uuid import UUID

from clinic.people.role import Role
from clinic.sync.kinds.kind import Incoming, Kind, Theatre
from clinic.sync.known import Known
from clinic.sync.result import Rejected
from planner.errors import Refused
from planner.records.plan import Plan, Signature
from planner.signing import Attestation, sign


def about(body: Signature) -> UUID:
    """The signed plan."""
    return UUID(body.plan_id)


def check(incoming: Incoming[Signature]) -> None:
    """Nobody signs in another person's name."""
    if incoming.body.signer_name != incoming.sender.full_name:
        text = "The signature's name is not the name of the account."
        raise Rejected("signer_differs", text, field="body.signer_name")


def fit(incoming: Incoming[Signature], known: Known) -> None:
    """The plan is known, current, and the very one that was signed."""
    signature = incoming.body
    plan = known.find(signature.plan_id, kind="plan", patient=incoming.entry.patient, where="body.plan_id")
    if plan.digest != signature.plan_digest:
        text = "Another content of the plan was signed."
        raise Rejected("plan_digest_differs", text, field="body.plan_digest")
    if plan.id in known.gone:
        text = "The plan has been replaced or taken back. Look at the present plan and sign that."
        raise Rejected("plan_superseded", text, field="body.plan_id")
    if _signed_again(plan.read(Plan), signature) != signature:
        text = "The check word does not belong to the plan."
        raise Rejected("signature_differs", text, field="body")


def _signed_again(plan: Plan, signature: Signature) -> Signature:
    attestation = Attestation(
        plan_id=signature.plan_id,
        plan_digest=signature.plan_digest,
        drawn=signature.drawn,
        acknowledged=signature.acknowledged,
        signer_name=signature.signer_name,
        signed_at=signature.signed_at,
    )
    try:
        return sign(plan, attestation)
    except Refused as refused:
        fault = refused.faults[0]
        raise Rejected(fault.code, fault.text, field="body") from refused


KIND = Kind(
    name="signature",
    body=Signature,
    writers=frozenset({Role.SURGEON}),
    theatre=Theatre.OF_CARDS,
    about=about,
    references=lambda body: (about(body),),
    check=check,
    fit=fit,
)
