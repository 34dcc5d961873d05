"""What a day's list needs, and what several lists need together."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

from planner.limits import IsoDate, Length, Unique, Within
from planner.provenance import Provenance
from planner.values.statement import Notice


class KitGroup(StrEnum):
    """Under which heading an article is packed."""

    SUTURES = "sutures"
    NEEDLES = "needles"
    INSTRUMENTS = "instruments"
    ADJUSTING = "for adjusting"
    MAGNIFICATION = "magnification"
    ANAESTHESIA = "anaesthesia"
    DISPLAY = "the plan in sight"


@dataclass(frozen=True, kw_only=True)
class Need:
    """How many pieces of an article one operation needs."""

    article: Annotated[str, Length(1, 60)]
    pieces: Annotated[int, Within(1, 100, "pieces")]


@dataclass(frozen=True, kw_only=True)
class CaseNeeds:
    """What one operation needs."""

    needs: Annotated[tuple[Need, ...], Length(0, 20), Unique(("article",))]


@dataclass(frozen=True, kw_only=True)
class TeamDay:
    """What one team needs on one day, operation by operation."""

    on: Annotated[str, IsoDate(2000)]
    team: Annotated[str, Length(1, 80)]
    place: Annotated[str, Length(0, 120)] = ""
    cases: Annotated[tuple[CaseNeeds, ...], Length(0, 40)] = ()


@dataclass(frozen=True, kw_only=True)
class KitLine:
    """One article: ``used`` by the plans, ``spare`` by the rule, ``total`` to be there; ``why`` says how."""

    article: str
    words: str
    group: KitGroup
    used: int
    spare: int
    total: int
    why: str
    provenance: Provenance


@dataclass(frozen=True, kw_only=True)
class PackedDay:
    """One list among those that are packed for."""

    on: str
    team: str
    place: str
    operations: int


@dataclass(frozen=True, kw_only=True)
class Uncounted:
    """An operation of a list, by its number there, that nothing is counted for."""

    on: str
    team: str
    place: str
    number: int


@dataclass(frozen=True, kw_only=True)
class Packing:
    """What all lists need together; ``spare_words`` say the spare rule.

    ``operations`` are those of the lists; ``not_counted`` are those among them that ``kit`` lacks, and ``notices`` say
    so.
    """

    days: tuple[PackedDay, ...]
    operations: int
    not_counted: tuple[Uncounted, ...]
    notices: tuple[Notice, ...]
    kit: tuple[KitLine, ...]
    spare_words: str
    practice_words: str
    engine_version: str
    disclaimer: str
