"""What the surgeon does to sign, before it is known whether it may be a signature."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.limits import IsoMoment, Length, Unique
from planner.records.plan import Digest, DrawnMuscle, RecordId


@dataclass(frozen=True, kw_only=True)
class Attestation:
    """A plan record, the drawing, the codes of the acknowledged cautions, who and when.

    ``plan_digest`` is the digest of the plan record's body as it was stored.
    """

    plan_id: RecordId
    plan_digest: Digest
    drawn: Annotated[tuple[DrawnMuscle, ...], Length(0, 12), Unique(("eye", "muscle"))]
    acknowledged: Annotated[tuple[str, ...], Length(0, 40)] = ()
    signer_name: Annotated[str, Length(1, 120)]
    signed_at: Annotated[str, IsoMoment()]
