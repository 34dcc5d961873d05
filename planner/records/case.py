"""What the engine plans from: an examination, the table to use and what the surgeon changed."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.anatomy import Eye, Muscle
from planner.limits import IsoDate, Length, Unique, Within
from planner.records.examination import Examination


@dataclass(frozen=True, kw_only=True)
class Change:
    """A dose that the surgeon sets by hand, in one option."""

    option: Annotated[str, Length(1, 60)]
    eye: Eye
    muscle: Muscle
    mm: Annotated[float, Within(0.5, 20, "mm")]


@dataclass(frozen=True, kw_only=True)
class Case:
    """Input of the engine, schema 1. ``table`` is the id of a dose table."""

    schema: int = 1
    examination: Examination
    table: Annotated[str, Length(1, 60)]
    born_on: Annotated[str, IsoDate()] | None = None
    changes: Annotated[tuple[Change, ...], Length(0, 24), Unique(("option", "eye", "muscle"))] = ()
