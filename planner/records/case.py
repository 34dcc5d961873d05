"""What the engine plans from: an examination, the table to use and what the surgeon changed."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

from planner.anatomy import Eye, Muscle
from planner.limits import IsoDate, Length, Unique, Within
from planner.records.dose_table import DoseTable
from planner.records.examination import Examination


class Aim(StrEnum):
    """Which reading of the primary position the plan answers; all at distance but ``near``."""

    DISTANCE = "distance"
    AFTER_PATCHING = "after patching"
    PRISM_ADAPTED = "prism adapted"
    NEAR = "near"


@dataclass(frozen=True, kw_only=True)
class Change:
    """A dose that the surgeon sets by hand, in one option."""

    option: Annotated[str, Length(1, 60)]
    eye: Eye
    muscle: Muscle
    mm: Annotated[float, Within(0.5, 20, "mm")]


@dataclass(frozen=True, kw_only=True)
class Case:
    """Input of the engine, schema 1.

    ``table`` is the id of a dose table: one of the engine's own or that of ``clinic_table``.
    ``overcorrection_pd`` is the early overcorrection that the surgeon wants in an intermittent exotropia.
    ``combine`` names options that are to be done at one sitting.
    """

    schema: int = 1
    examination: Examination
    table: Annotated[str, Length(1, 60)]
    born_on: Annotated[str, IsoDate()] | None = None
    changes: Annotated[tuple[Change, ...], Length(0, 24), Unique(("option", "eye", "muscle"))] = ()
    aim: Aim = Aim.DISTANCE
    overcorrection_pd: Annotated[float, Within(0, 15, "prism dioptres")] = 0.0
    combine: Annotated[tuple[Annotated[str, Length(1, 60)], ...], Length(0, 6)] = ()
    clinic_table: DoseTable | None = None
