"""A day's list with its times, warnings and kit."""

from __future__ import annotations

from planner.codec import write
from planner.desk.asks.listing import list_of
from planner.desk.fields import Fields


def ask(fields: Fields) -> object:
    """``DayList``."""
    return write(list_of(fields))
