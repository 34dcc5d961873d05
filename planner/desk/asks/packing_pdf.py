"""A packing list on paper."""

from __future__ import annotations

import base64

from planner.desk.asks.packing_of import packing_of
from planner.desk.fields import Fields


def ask(fields: Fields) -> object:
    """``{pdf: base64}``."""
    made = packing_of(fields)
    from planner.paper import packing_pdf  # noqa: PLC0415 -- the phone fetches ReportLab only when a page is drawn

    return {"pdf": base64.b64encode(packing_pdf(made)).decode("ascii")}
