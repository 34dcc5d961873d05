"""How theatre is set up for a plan."""

from __future__ import annotations

from planner.codec import write
from planner.desk.asks.setting_up import sheet_of
from planner.desk.fields import Fields


def ask(fields: Fields) -> object:
    """``SetUpSheet``."""
    return write(sheet_of(fields))
