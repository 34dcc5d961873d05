"""A value as JSON without what has its default; the codec reads it back to the same value."""

from __future__ import annotations

from dataclasses import MISSING, fields, is_dataclass
from typing import Any

from planner.codec import write


def slim(value: Any) -> object:  # noqa: ANN401 -- any value of the engine
    """``schema`` is always said, for a body without it is refused."""
    if isinstance(value, tuple):
        return [slim(item) for item in value]
    if not is_dataclass(value):
        return write(value)
    return {
        member.name: slim(getattr(value, member.name))
        for member in fields(value)
        if member.name == "schema" or member.default is MISSING or getattr(value, member.name) != member.default
    }
