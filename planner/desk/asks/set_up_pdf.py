"""The set-up sheet on paper."""

from __future__ import annotations

import base64

from planner.desk.asks.setting_up import sheet_of
from planner.desk.fields import Fields


def ask(fields: Fields) -> object:
    """``{pdf: base64}``."""
    made = sheet_of(fields)
    from planner.paper import set_up_pdf  # noqa: PLC0415 -- the phone fetches ReportLab only when a page is drawn

    return {"pdf": base64.b64encode(set_up_pdf(made)).decode("ascii")}
