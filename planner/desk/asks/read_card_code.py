"""A code from paper, taken back to the card."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner import card as cards
from planner.card.code import MOST_CHARACTERS, CardKey, read_code, untold
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.limits import Length


@dataclass(frozen=True, kw_only=True)
class Reading:
    """What the camera read, and the card keys of the clinic, the newest first."""

    text: Annotated[str, Length(1, 4 * MOST_CHARACTERS)]
    card_keys: Annotated[tuple[CardKey, ...], Length(0, 20)]


def ask(fields: Fields) -> object:
    """``{card, plan_id, plan_digest, patient_id}``: the card, what the code cannot tell said on it, and the records."""
    asked = read(Reading, fields)
    found = read_code(asked.text, asked.card_keys)
    return {
        "card": write(untold(cards.card(found.pieces))),
        "plan_id": found.pieces.signature.plan_id,
        "plan_digest": found.pieces.plan_digest,
        "patient_id": found.patient_id,
    }
