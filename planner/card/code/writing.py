"""A card's three records as a code."""

from __future__ import annotations

from typing import Final

from planner import plans
from planner.canonical import digest
from planner.card.code import base45
from planner.card.code.contents import Contents, Told, pack
from planner.card.code.keys import CardKey, key_id, seal
from planner.card.pieces import Pieces
from planner.codec import write
from planner.errors import Fault, Refused
from planner.records.plan import Plan

PREFIX: Final = "CARD"
VERSION: Final = 1
LENGTH_BYTES: Final = 2

MOST_CHARACTERS: Final = 1853
"""What a QR code of version 25 holds in its alphanumeric mode at the lowest level of correction (ISO/IEC 18004)."""


def card_code(pieces: Pieces, key: CardKey) -> str:
    """The code; :class:`Refused` with ``code_impossible`` or ``code_too_long`` where the card can have none."""
    plan, signature = pieces.plan, pieces.signature
    _refuse_other_plan(plan, pieces.plan_digest)
    contents = pack(
        Contents(
            plan_id=signature.plan_id,
            patient_id=plan.patient_id,
            examination_id=plan.examination_id,
            plan_digest=pieces.plan_digest,
            patient_digest=plan.patient_digest,
            examination_digest=plan.examination_digest,
            told=Told(
                engine=plan.engine_version,
                patient=pieces.patient,
                case=plan.case,
                option=plan.option.id,
                note=plan.note,
                signer=signature.signer_name,
                at=signature.signed_at,
            ),
        )
    )
    prefix = f"{PREFIX}{VERSION}/"
    body = key_id(key) + len(contents).to_bytes(LENGTH_BYTES, "big") + contents
    text = prefix + base45.encode(body + seal(key, prefix.encode() + body))
    if len(text) > MOST_CHARACTERS:
        raise Refused(
            Fault(
                code="code_too_long",
                text="The plan and its notes are too long for a code that a camera reads from paper.",
                value=f"{len(text)} characters",
                allowed=f"{MOST_CHARACTERS} characters",
            )
        )
    return text


def _refuse_other_plan(plan: Plan, plan_digest: str) -> None:
    """Only what the engine makes again to the same digest can be told by its case alone."""
    try:
        again = digest(write(plans.plan(choice_of(plan))))
    except Refused:
        again = ""
    if again != plan_digest:
        raise Refused(
            Fault(
                code="code_impossible",
                text="This engine does not make the signed plan again to the letter, so it gets no code.",
                value=plan.engine_version,
            )
        )


def choice_of(plan: Plan) -> plans.Choice:
    """What the plan was made of."""
    return plans.Choice(
        case=plan.case,
        option=plan.option.id,
        patient_id=plan.patient_id,
        patient_digest=plan.patient_digest,
        examination_id=plan.examination_id,
        examination_digest=plan.examination_digest,
        note=plan.note,
    )
