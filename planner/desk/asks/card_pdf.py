"""The card of a signed plan, as a page."""

from __future__ import annotations

import base64

from planner.desk.asks.pieces import card_of
from planner.desk.fields import Fields


def ask(fields: Fields) -> object:
    """``{pdf: base64}``."""
    made = card_of(fields)
    from planner.card.pdf import pdf  # noqa: PLC0415 -- the phone fetches ReportLab only when a page is drawn

    return {"pdf": base64.b64encode(pdf(made)).decode("ascii")}
