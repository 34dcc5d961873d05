"""Whether the frozen cases still give the same answers."""

from __future__ import annotations

from planner import self_test
from planner.codec import read
from planner.desk.asks.nothing import Nothing
from planner.desk.fields import Fields


def ask(fields: Fields) -> object:
    """``{cases: n}``."""
    read(Nothing, fields)
    return {"cases": self_test.self_test()}
