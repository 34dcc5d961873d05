"""The operation note, as a value."""

from __future__ import annotations

from planner.codec import read, write
from planner.desk.fields import Fields
from planner.operation.note import Pieces, note


def ask(fields: Fields) -> object:
    """An ``OperationNote``."""
    return write(note(read(Pieces, fields)))
