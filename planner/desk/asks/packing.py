"""What several days and teams need together."""

from __future__ import annotations

from planner.codec import write
from planner.desk.asks.packing_of import packing_of
from planner.desk.fields import Fields


def ask(fields: Fields) -> object:
    """``Packing``."""
    return write(packing_of(fields))
