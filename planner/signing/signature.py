"""The signature of a plan."""

from __future__ import annotations

from planner.checkword import check_word
from planner.errors import Refused
from planner.records.plan import Plan, Signature
from planner.signing.attestation import Attestation
from planner.signing.hindrances import hindrances


def sign(plan: Plan, attestation: Attestation) -> Signature:
    """The signature that freezes ``plan``; :class:`Refused` with everything that hinders it."""
    found = hindrances(plan, attestation.drawn, attestation.acknowledged)
    if found:
        raise Refused(*found)
    return Signature(
        schema=1,
        plan_id=attestation.plan_id,
        plan_digest=attestation.plan_digest,
        check_word=check_word(attestation.plan_digest),
        drawn=attestation.drawn,
        acknowledged=attestation.acknowledged,
        signer_name=attestation.signer_name,
        signed_at=attestation.signed_at,
    )
