"""An audit on paper."""

from __future__ import annotations

import base64

from planner.audit import Question
from planner.codec import read
from planner.desk.asks.audit import audit_of
from planner.desk.fields import Fields


def ask(fields: Fields) -> object:
    """``{pdf: base64}``."""
    made = audit_of(fields)
    asked = read(Question, {**fields, "results": []})
    from planner.paper import audit_pdf  # noqa: PLC0415 -- the phone fetches ReportLab only when a page is drawn

    return {"pdf": base64.b64encode(audit_pdf(made, asked.clinic, asked.on)).decode("ascii")}
