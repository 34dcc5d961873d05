"""Who is to be seen today after an operation, and who should have been."""

from __future__ import annotations

from planner import followup
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.followup.due import Question


def ask(fields: Fields) -> object:
    """``Attendance``."""
    return write(followup.due(read(Question, fields)))
