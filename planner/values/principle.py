"""What holds instead of a standard dose where a table must not be used, or not by itself."""

from __future__ import annotations

from dataclasses import dataclass

from planner.anatomy import Eye
from planner.values.option import Answers
from planner.values.statement import Level, Statement


@dataclass(frozen=True, kw_only=True)
class Principle(Statement):
    """How a palsy or a restriction is operated; ``code`` ends in the eye where one is known.

    ``topic`` is the diagnosis or the sign that it follows from. ``level`` says what becomes of the standard doses for
    the deviations named in ``concerns``: a stop forbids them, a caution warns, a note leaves them. ``figures`` are the
    published ones; where there are none, no dose is invented.
    """

    topic: str
    eye: Eye | None
    level: Level
    concerns: tuple[Answers, ...]
    figures: tuple[Statement, ...]
