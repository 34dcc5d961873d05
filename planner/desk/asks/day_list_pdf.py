"""A day's list on paper."""

from __future__ import annotations

import base64

from planner.desk.asks.listing import list_of
from planner.desk.fields import Fields


def ask(fields: Fields) -> object:
    """``{pdf: base64}``."""
    made = list_of(fields)
    from planner.paper import day_list_pdf  # noqa: PLC0415 -- the phone fetches ReportLab only when a page is drawn

    return {"pdf": base64.b64encode(day_list_pdf(made)).decode("ascii")}
