"""Which engine this is, and which tables it has."""

from __future__ import annotations

from planner import tables
from planner.codec import read, write
from planner.desk.asks.nothing import Nothing
from planner.desk.fields import Fields
from planner.version import ENGINE_VERSION


def ask(fields: Fields) -> object:
    """``{engine_version, tables: [TableStamp]}``."""
    read(Nothing, fields)
    return {"engine_version": ENGINE_VERSION, "tables": [write(table.stamp) for table in tables.tables()]}
