"""A field that a step cannot do without."""

from __future__ import annotations

from typing import TypeVar

from planner.errors import Fault, Refused

Given = TypeVar("Given")


def given(value: Given | None, field: str) -> Given:
    """The value; :class:`Refused` with ``entry_missing`` where there is none."""
    if value is None:
        text = "This step was left without what it asks for."
        raise Refused(Fault(code="entry_missing", text=text, field=f"entries.{field}"))
    return value
