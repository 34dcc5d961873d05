"""The code of a signed plan's card, for a camera."""

from __future__ import annotations

from dataclasses import dataclass

from planner.card.code import CardKey, card_code
from planner.codec import read
from planner.desk.asks.pieces import pieces_of
from planner.desk.fields import Fields


@dataclass(frozen=True, kw_only=True)
class Coding:
    """The clinic's card key."""

    card_key: CardKey


def ask(fields: Fields) -> object:
    """``{code: text}``."""
    named = {name: fields.pop(name) for name in ("card_key",) if name in fields}
    key = read(Coding, named).card_key
    return {"code": card_code(pieces_of(fields), key)}
