"""What a clinic can make its own, as it stands now: the form that a practice is edited on."""

from __future__ import annotations

from dataclasses import dataclass

from planner.provenance import Provenance
from planner.records.follow_up import PlannedVisit
from planner.records.practice import FigureName, Item


@dataclass(frozen=True, kw_only=True)
class FormWay:
    """One way; ``never`` says why it cannot be made usual, empty where it can."""

    id: str
    words: str
    never: str


@dataclass(frozen=True, kw_only=True)
class FormItem:
    """An item with its ways; ``choice`` is what the clinic made usual, null where it left that to common practice."""

    item: Item
    title: str
    ways: tuple[FormWay, ...]
    choice: str | None
    words: str


@dataclass(frozen=True, kw_only=True)
class FormFigure:
    """A figure: as it is usual, as it stands here, and between which limits it can be set."""

    name: FigureName
    words: str
    usual: int
    value: int
    low: int
    high: int
    unit: str
    provenance: Provenance


@dataclass(frozen=True, kw_only=True)
class FormVisits:
    """The visits after an operation: as they are usual, and as they stand here."""

    usual: tuple[PlannedVisit, ...]
    standing: tuple[PlannedVisit, ...]
    provenance: Provenance


@dataclass(frozen=True, kw_only=True)
class PracticeForm:
    """All that a practice can hold."""

    items: tuple[FormItem, ...]
    figures: tuple[FormFigure, ...]
    visits: FormVisits
