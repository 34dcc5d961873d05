"""The signature under a plan."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner import plans, signing
from planner.canonical import digest
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.limits import IsoMoment, Length, Unique
from planner.records.plan import DrawnMuscle, Plan, RecordId


@dataclass(frozen=True, kw_only=True)
class Signing:
    """A plan record and what its surgeon did to sign it."""

    plan: Plan
    plan_id: RecordId
    drawn: Annotated[tuple[DrawnMuscle, ...], Length(0, 12), Unique(("eye", "muscle"))]
    acknowledged: Annotated[tuple[str, ...], Length(0, 40)]
    signer_name: Annotated[str, Length(1, 120)]
    signed_at: Annotated[str, IsoMoment()]


def ask(fields: Fields) -> object:
    """A ``Signature``."""
    asked = read(Signing, fields)
    plans.check(asked.plan)
    attestation = signing.Attestation(
        plan_id=asked.plan_id,
        plan_digest=digest(fields["plan"]),
        drawn=asked.drawn,
        acknowledged=asked.acknowledged,
        signer_name=asked.signer_name,
        signed_at=asked.signed_at,
    )
    return write(signing.sign(asked.plan, attestation))
