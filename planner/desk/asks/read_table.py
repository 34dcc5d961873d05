"""A clinic's own table, from the text of its file."""

from __future__ import annotations

from dataclasses import dataclass

from planner import tables
from planner.codec import read, write
from planner.desk.fields import Fields


@dataclass(frozen=True, kw_only=True)
class ReadingTable:
    """Which field a file's text came in; what is in it is the business of the tables."""

    text: bool


def ask(fields: Fields) -> object:
    """The body of a ``dose_table``."""
    read(ReadingTable, dict.fromkeys(fields, True))
    return write(tables.from_text(fields["text"]))
