"""The card of a signed plan, as a value."""

from __future__ import annotations

from planner.codec import write
from planner.desk.asks.pieces import card_of
from planner.desk.fields import Fields


def ask(fields: Fields) -> object:
    """A ``Card``."""
    return write(card_of(fields))
