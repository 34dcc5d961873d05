"""Who is to be seen today after an operation, and who should have been."""

from __future__ import annotations

from planner import followup
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.errors import Refused
from planner.followup.due import Question
from planner.followup.hindrances import misplaced


def ask(fields: Fields) -> object:
    """``Attendance``; refused where a visit ends before it begins."""
    asked = read(Question, fields)
    faults = tuple(misplaced(asked.usual, "usual"))
    if faults:
        raise Refused(*faults)
    return write(followup.due(asked))
