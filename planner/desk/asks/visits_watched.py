"""What must not wait after operations, over many of them at once."""

from __future__ import annotations

from planner import followup
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.followup.watch import Question


def ask(fields: Fields) -> object:
    """A ``Watched`` for each operation."""
    return [write(each) for each in followup.watched(read(Question, fields))]
