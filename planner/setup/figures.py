"""The figures of common practice behind set-up, kit and list; each may be set by a clinic for itself."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final

from planner.limits import Within
from planner.provenance import Mark, Provenance
from planner.records.practice import FigureName, Practice

PRACTICE: Final = Provenance(mark=Mark.COMMON_PRACTICE, source="theatre set-up as commonly taught")


@dataclass(frozen=True, kw_only=True)
class Definition:
    """What a figure is called, what it usually is and what a clinic may make of it."""

    words: str
    usual: int
    within: Within


DEFINITIONS: Final[Mapping[FigureName, Definition]] = MappingProxyType(
    {
        FigureName.CHILD_UNDER_YEARS: Definition(
            words="A child, for whom drops alone are refused, is under", usual=18, within=Within(12, 21, "years")
        ),
        FigureName.LOUPE_FROM_CM: Definition(
            words="Working distance of the loupe, from", usual=40, within=Within(25, 60, "cm")
        ),
        FigureName.LOUPE_TO_CM: Definition(
            words="Working distance of the loupe, up to", usual=50, within=Within(25, 80, "cm")
        ),
        FigureName.ADJUST_AFTER_BLOCK_H: Definition(
            words="Adjusting waits after a local block for", usual=6, within=Within(3, 48, "hours")
        ),
        FigureName.DROPS_WAIT_MIN: Definition(
            words="Drops stay in the fornix for", usual=2, within=Within(1, 20, "minutes")
        ),
        FigureName.SUTURE_WEAK_FROM_WEEKS: Definition(
            words="The suture has lost its strength from", usual=3, within=Within(1, 12, "weeks")
        ),
        FigureName.SUTURE_WEAK_TO_WEEKS: Definition(
            words="The suture has lost its strength by", usual=4, within=Within(1, 16, "weeks")
        ),
        FigureName.SUTURE_ABSORBED_MONTHS: Definition(
            words="The suture is absorbed in about", usual=2, within=Within(1, 12, "months")
        ),
        FigureName.TURNOVER_MIN: Definition(
            words="Between two operations of a list", usual=15, within=Within(0, 120, "minutes")
        ),
        FigureName.CHILDREN_BEFORE_H: Definition(
            words="Children are operated on before", usual=12, within=Within(8, 24, "o'clock")
        ),
        FigureName.SPARE_PER_CENT: Definition(
            words="Spare for what is used up", usual=20, within=Within(0, 300, "per cent")
        ),
        FigureName.SPARE_AT_LEAST: Definition(words="Spare, but at least", usual=1, within=Within(0, 50, "pieces")),
        FigureName.CASES_PER_SET: Definition(
            words="Operations that one instrument set serves in a day", usual=1, within=Within(1, 20, "operations")
        ),
    }
)


@dataclass(frozen=True, kw_only=True)
class Figures:
    """All figures as they stand in one clinic."""

    values: Mapping[FigureName, int]
    own: frozenset[FigureName]
    source: str

    def __getitem__(self, name: FigureName) -> int:
        return self.values[name]

    def provenance(self, *names: FigureName) -> Provenance:
        """The clinic's own where it set any of them, else common practice."""
        if self.own.isdisjoint(names):
            return PRACTICE
        return Provenance(mark=Mark.CLINICS_OWN, source=self.source)


def figures(practice: Practice | None) -> Figures:
    """The usual figures with the clinic's own in their place."""
    own = {each.name: each.value for each in practice.figures} if practice else {}
    usual = {name: definition.usual for name, definition in DEFINITIONS.items()}
    return Figures(values=usual | own, own=frozenset(own), source=source(practice))


def source(practice: Practice | None) -> str:
    """Who decided the clinic's practice, and why."""
    return f"{practice.decided_by}: {practice.reason}" if practice else ""
