"""How this clinic works where it differs from common practice: in theatre, and when it sees patients afterwards."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, ClassVar

from planner.limits import AnyOf, Length, Pattern, Prose, Unique, Within
from planner.records.follow_up import PlannedVisit

ChoiceId = Annotated[str, Pattern(r"[a-z][a-z_]{1,39}", "lower-case words joined by underscores")]


class Item(StrEnum):
    """What a set-up sheet answers, in the order in which it is read."""

    MAGNIFICATION = "magnification"
    ANAESTHESIA = "anaesthesia"
    ADJUSTMENT = "adjustment"
    SUTURE = "suture"
    NEEDLE = "needle"
    DISPLAY = "display"


class FigureName(StrEnum):
    """The figures of common practice that a clinic may set; :mod:`planner.setup.figures` has their limits."""

    CHILD_UNDER_YEARS = "child_under_years"
    LOUPE_FROM_CM = "loupe_from_cm"
    LOUPE_TO_CM = "loupe_to_cm"
    ADJUST_AFTER_BLOCK_H = "adjust_after_block_h"
    DROPS_WAIT_MIN = "drops_wait_min"
    SUTURE_WEAK_FROM_WEEKS = "suture_weak_from_weeks"
    SUTURE_WEAK_TO_WEEKS = "suture_weak_to_weeks"
    SUTURE_ABSORBED_MONTHS = "suture_absorbed_months"
    TURNOVER_MIN = "turnover_min"
    CHILDREN_BEFORE_H = "children_before_h"
    SPARE_PER_CENT = "spare_per_cent"
    SPARE_AT_LEAST = "spare_at_least"
    CASES_PER_SET = "cases_per_set"


@dataclass(frozen=True, kw_only=True)
class OwnChoice:
    """What is usual here for an item, and what the clinic wants said with it."""

    RULES: ClassVar = (AnyOf(("choice", "words"), "a choice, words of the clinic's own, or both"),)

    item: Item
    choice: ChoiceId | None = None
    words: Annotated[str, Prose(3, 400)] | None = None


@dataclass(frozen=True, kw_only=True)
class OwnFigure:
    """A figure of common practice as this clinic sets it."""

    name: FigureName
    value: Annotated[int, Within(0, 1000)]


@dataclass(frozen=True, kw_only=True)
class Practice:
    """Body of a ``practice`` record, schema 1. ``decided_by`` answers for it, ``reason`` says why.

    ``visits`` are those usual here after an operation, null: as common practice.
    """

    schema: int = 1
    decided_by: Annotated[str, Length(1, 120)]
    reason: Annotated[str, Prose(10, 400)]
    choices: Annotated[tuple[OwnChoice, ...], Length(0, 6), Unique(("item",))] = ()
    figures: Annotated[tuple[OwnFigure, ...], Length(0, 20), Unique(("name",))] = ()
    visits: Annotated[tuple[PlannedVisit, ...], Length(1, 20), Unique(("name",))] | None = None
