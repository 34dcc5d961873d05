"""A sentence that the engine says, with its figures and where they come from."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from planner.provenance import Provenance


@dataclass(frozen=True, kw_only=True)
class Statement:
    """``code`` is stable and names the kind of sentence; ``text`` says it; ``facts`` are its figures by name."""

    code: str
    text: str
    provenance: Provenance
    facts: Mapping[str, str | float]


class Strength(StrEnum):
    """How firmly a finding stands, strongest first: ``borderline`` is within measurement error of not being so."""

    CLEAR = "clear"
    BORDERLINE = "borderline"
    CANNOT_TELL = "cannot tell"


@dataclass(frozen=True, kw_only=True)
class Finding(Statement):
    """What the readings say. ``settle``: what measurement would settle it, empty where nothing is open."""

    strength: Strength
    settle: str


class Level(StrEnum):
    """Three levels, never mixed: a stop refuses, a caution must be acknowledged and is printed, a note informs."""

    STOP = "stop"
    CAUTION = "caution"
    NOTE = "note"


@dataclass(frozen=True, kw_only=True)
class Notice(Statement):
    """A safety statement about an option or a whole case."""

    level: Level
