"""Whether what was drawn is what an option says."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner import signing
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.limits import Length, Unique
from planner.records.plan import DrawnMuscle
from planner.values.option import Option


@dataclass(frozen=True, kw_only=True)
class Comparing:
    """An option and the drawing of it."""

    option: Option
    drawn: Annotated[tuple[DrawnMuscle, ...], Length(0, 12), Unique(("eye", "muscle"))]


def ask(fields: Fields) -> object:
    """A ``Comparison``."""
    asked = read(Comparing, fields)
    return write(signing.compare_drawing(asked.option, asked.drawn))
