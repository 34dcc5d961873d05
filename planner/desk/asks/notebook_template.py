"""The file that a surgeon's old cases are written into, and what each of its columns holds."""

from __future__ import annotations

from planner.codec import read, write
from planner.desk.asks.nothing import Nothing
from planner.desk.fields import Fields
from planner.exchange.notebook import all_columns, template


def ask(fields: Fields) -> object:
    """``{text, columns: [Column]}``."""
    read(Nothing, fields)
    return {"text": template(), "columns": write(all_columns())}
