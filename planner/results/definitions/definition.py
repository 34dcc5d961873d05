"""What a definition of success is."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from planner.provenance import Provenance
from planner.results.result import Result, Seen


@dataclass(frozen=True, kw_only=True)
class Definition:
    """``concerns`` says of which results it speaks, ``met`` whether a visit meets it, null where it cannot tell."""

    id: str
    words: str
    provenance: Provenance
    concerns: Callable[[Result], bool]
    met: Callable[[Seen], bool | None]


def everybody(_result: Result) -> bool:
    """A definition for every operation."""
    return True
