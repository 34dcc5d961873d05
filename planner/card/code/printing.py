"""A card with its code, for paper."""

from __future__ import annotations

from dataclasses import replace

from planner.card.code.keys import CardKey
from planner.card.code.writing import card_code
from planner.card.pieces import Pieces
from planner.errors import Refused
from planner.values.card import Card


def coded(card: Card, pieces: Pieces, key: CardKey | None) -> Card:
    """The card with its code; without one, in its place, why."""
    if key is None:
        return card
    try:
        return replace(card, code=card_code(pieces, key))
    except Refused as refused:
        return replace(card, no_code_words=f"No code: {refused.faults[0].text}")
