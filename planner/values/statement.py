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


class Level(StrEnum):
    """Three levels, never mixed: a stop refuses, a caution must be acknowledged and is printed, a note informs."""

    STOP = "stop"
    CAUTION = "caution"
    NOTE = "note"


@dataclass(frozen=True, kw_only=True)
class Notice(Statement):
    """A safety statement about an option or a whole case."""

    level: Level
