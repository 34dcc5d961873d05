"""Operations as CSV without identifiers."""

from __future__ import annotations

from planner.audit import export
from planner.codec import read, write
from planner.desk.fields import Fields


def ask(fields: Fields) -> object:
    """``Exported``; refused where a person has no shift, or one that hides nothing."""
    return write(export.export(read(export.Question, fields)))
