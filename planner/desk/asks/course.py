"""The alignment after an operation over time, against what the signed plan expected."""

from __future__ import annotations

from planner import followup
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.followup.aftercare import Aftercare


def ask(fields: Fields) -> object:
    """A ``Course``."""
    return write(followup.course(read(Aftercare, fields)))
