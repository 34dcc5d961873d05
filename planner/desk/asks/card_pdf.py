"""The card of a signed plan, as a page."""

from __future__ import annotations

import base64
from dataclasses import dataclass

from planner import card as cards
from planner.card.code import CardKey, coded
from planner.codec import read
from planner.desk.asks.pieces import Bodies, put_together
from planner.desk.fields import Fields


@dataclass(frozen=True, kw_only=True)
class Printing(Bodies):
    """The records, and the clinic's card key, where this device has it: with it the page carries a code."""

    card_key: CardKey | None = None


def ask(fields: Fields) -> object:
    """``{pdf: base64}``."""
    asked = read(Printing, fields)
    pieces = put_together(asked, fields)
    made = coded(cards.card(pieces), pieces, asked.card_key)
    from planner.card.pdf import pdf  # noqa: PLC0415 -- the phone fetches ReportLab only when a page is drawn

    return {"pdf": base64.b64encode(pdf(made)).decode("ascii")}
