"""The code of a signed plan's card, for a camera."""

from __future__ import annotations

from dataclasses import dataclass

from planner.card.code import CardKey, card_code
from planner.codec import read
from planner.desk.asks.pieces import Bodies, put_together
from planner.desk.fields import Fields


@dataclass(frozen=True, kw_only=True)
class Coding(Bodies):
    """The records and the clinic's card key."""

    card_key: CardKey


def ask(fields: Fields) -> object:
    """``{code: text}``."""
    asked = read(Coding, fields)
    return {"code": card_code(put_together(asked, fields), asked.card_key)}
