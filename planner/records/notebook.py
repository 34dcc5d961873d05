"""A surgeon's cases from before this app, carried over from a notebook: facts as they were written down there.

No patient is named: ``reference`` is the notebook's own number or mark. No plan of the engine and no signature stand
behind such a case, so it is a record of its own and never looks like an operation that went through the app.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, ClassVar

from planner.anatomy import Eye, Muscle
from planner.limits import AnyOf, IsoDate, Length, Unique, Within
from planner.records.diagnosis import Diagnosis
from planner.records.plan import Digest

CarriedPd = Annotated[float, Within(-150, 150, "prism dioptres, eso +, exo -")]


class HorizontalFamily(StrEnum):
    """The operations that can be carried over, by the engine's names without their side."""

    RECESS_BOTH_MR = "recess-both-mr"
    RESECT_BOTH_LR = "resect-both-lr"
    RECESS_MR_RESECT_LR = "recess-mr-resect-lr"
    RECESS_MR = "recess-mr"
    RESECT_LR = "resect-lr"
    RECESS_BOTH_MR_RESECT_LR = "recess-both-mr-resect-lr"
    RECESS_BOTH_LR = "recess-both-lr"
    RESECT_BOTH_MR = "resect-both-mr"
    RECESS_LR_RESECT_MR = "recess-lr-resect-mr"
    RECESS_LR = "recess-lr"
    RESECT_MR = "resect-mr"
    RECESS_BOTH_LR_RESECT_MR = "recess-both-lr-resect-mr"


@dataclass(frozen=True, kw_only=True)
class CarriedMuscle:
    """The millimetres that one muscle was moved by; the family says in which way."""

    eye: Eye
    muscle: Muscle
    mm: Annotated[float, Within(0.5, 20, "mm")]


@dataclass(frozen=True, kw_only=True)
class CarriedVisit:
    """What was measured after the operation, in the primary position."""

    days_after: Annotated[int, Within(0, 20000, "days after the operation")]
    distance_pd: CarriedPd
    near_pd: CarriedPd | None = None


@dataclass(frozen=True, kw_only=True)
class CarriedCase:
    """One row. What was done is told by ``muscles``, or by the deviation ``table_dose_pd`` the table was looked up at.

    ``row`` is the line of the file. ``before_pd`` is the deviation at distance that was operated for. The diagnosis is
    a word of the list, for free words could name somebody.
    """

    RULES: ClassVar = (AnyOf(("muscles", "table_dose_pd"), "the millimetres of each muscle, or the table dose"),)

    row: Annotated[int, Within(1, 100000, "line of the file")]
    reference: Annotated[str, Length(1, 40)]
    operated_on: Annotated[str, IsoDate()]
    age_years: Annotated[float, Within(0, 120, "years")] | None = None
    diagnosis: Diagnosis | None = None
    family: HorizontalFamily
    table: Annotated[str, Length(1, 60)]
    muscles: Annotated[tuple[CarriedMuscle, ...], Length(1, 4), Unique(("eye", "muscle"))] | None = None
    table_dose_pd: Annotated[float, Within(1, 150, "prism dioptres")] | None = None
    before_pd: CarriedPd
    before_near_pd: CarriedPd | None = None
    seen: Annotated[tuple[CarriedVisit, ...], Length(0, 6), Unique(("days_after",))] = ()
    reoperated_days: Annotated[int, Within(0, 20000, "days after the operation")] | None = None
    operated_before: bool
    suture_moved: bool
    complication: bool
    palsy_or_restriction: bool


@dataclass(frozen=True, kw_only=True)
class Notebook:
    """Body of a ``notebook`` record, schema 1: what one import carried over, taken back as a whole.

    ``file_digest`` is the SHA-256 of the file's text.
    """

    schema: int = 1
    title: Annotated[str, Length(1, 120)]
    surgeon_name: Annotated[str, Length(1, 120)]
    file_digest: Digest
    cases: Annotated[tuple[CarriedCase, ...], Length(1, 500), Unique(("reference", "operated_on"))]
