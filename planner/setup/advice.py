"""What an item's module says, before the clinic's practice and the surgeon have spoken."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from types import MappingProxyType

from planner.provenance import Mark, Provenance
from planner.records.practice import Item
from planner.setup.facts import Facts
from planner.setup.figures import PRACTICE
from planner.values.statement import Level, Notice, Statement

Chosen = Mapping[Item, str]
"""What stands for the items decided before."""

NOTHING_CHOSEN: Chosen = MappingProxyType({})

MEMORY = Provenance(mark=Mark.FROM_MEMORY, source="standard teaching")


@dataclass(frozen=True, kw_only=True)
class Way:
    """One way to do an item; ``never`` is the reason why it is refused to everybody, empty where it is not."""

    id: str
    words: str
    merit: Callable[[Facts], Statement]
    never: str = ""
    never_from: Provenance = PRACTICE


@dataclass(frozen=True, kw_only=True)
class Advice:
    """What the rules suggest. ``usual``: nothing about this patient decided it, so a clinic's own custom may."""

    choice: str
    usual: bool
    reasons: tuple[Statement, ...]
    would_change: tuple[Statement, ...]


@dataclass(frozen=True, kw_only=True)
class ItemRules:
    """One item: its ways, what is suggested, which ways are refused to this patient, what a choice is warned of."""

    item: Item
    title: str
    ways: tuple[Way, ...]
    advise: Callable[[Facts, Chosen], Advice]
    refusals: Callable[[Facts], Mapping[str, Notice]] = lambda _facts: {}
    cautions: Callable[[Facts, str, Chosen], Iterator[Notice]] = lambda _facts, _choice, _chosen: iter(())

    def way(self, choice: str) -> Way:
        """The way of that id."""
        return next(way for way in self.ways if way.id == choice)


def say(code: str, text: str, provenance: Provenance = PRACTICE, **facts: str | float) -> Statement:
    """A sentence, common practice unless it says otherwise."""
    return Statement(code=code, text=text, provenance=provenance, facts=facts)


def warn(level: Level, code: str, text: str, provenance: Provenance = PRACTICE, **facts: str | float) -> Notice:
    """A warning of that level."""
    return Notice(code=code, text=text, provenance=provenance, facts=facts, level=level)


def always(code: str, text: str, provenance: Provenance = PRACTICE) -> Callable[[Facts], Statement]:
    """The same sentence for every patient."""
    return lambda _facts: say(code, text, provenance)
