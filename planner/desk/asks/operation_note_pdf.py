"""The operation note, as pages."""

from __future__ import annotations

import base64

from planner.codec import read
from planner.desk.fields import Fields
from planner.operation.note import Pieces, note


def ask(fields: Fields) -> object:
    """``{pdf: base64}``."""
    made = note(read(Pieces, fields))
    from planner.operation.note.pdf import pdf  # noqa: PLC0415 -- the phone fetches ReportLab only when a page is drawn

    return {"pdf": base64.b64encode(pdf(made)).decode("ascii")}
