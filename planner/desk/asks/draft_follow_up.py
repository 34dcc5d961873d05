"""A visit after an operation that is about to be recorded."""

from __future__ import annotations

from planner import followup
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.followup.draft import Coming


def ask(fields: Fields) -> object:
    """A ``VisitDraft``."""
    return write(followup.draft(read(Coming, fields)))
