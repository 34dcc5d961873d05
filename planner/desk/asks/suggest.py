"""A surgeon's own results beside the doses of a case."""

from __future__ import annotations

from planner.codec import read, write
from planner.desk.fields import Fields
from planner.suggestion import Question, suggest


def ask(fields: Fields) -> object:
    """An ``OwnColumn``."""
    return write(suggest(read(Question, fields)))
