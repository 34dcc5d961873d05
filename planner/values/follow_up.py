"""What the engine says of visits after operations."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.values.statement import Statement


class VisitState(StrEnum):
    """Where a planned visit stands today. ``missed``: its time is over and a later one has come or was kept."""

    SEEN = "seen"
    AHEAD = "ahead"
    DUE = "due"
    OVERDUE = "overdue"
    MISSED = "missed"


@dataclass(frozen=True, kw_only=True)
class Visit:
    """A planned visit of one operation. ``days_over`` is how long it has been overdue, 0 where it is not."""

    name: str
    from_on: str
    to_on: str
    state: VisitState
    seen_on: str | None
    days_over: int
    words: str


@dataclass(frozen=True, kw_only=True)
class Followed:
    """The visits of one operation; ``next`` is the one to be kept now or next, null where none is left.

    ``unplanned`` are the days of visits that were not among the planned ones.
    """

    id: str
    visits: tuple[Visit, ...]
    next: Visit | None
    unplanned: tuple[str, ...]


@dataclass(frozen=True, kw_only=True)
class Attendance:
    """Operations and their visits today: ids of those overdue, longest first, and of those due, soonest end first."""

    today: str
    overdue: tuple[str, ...]
    due: tuple[str, ...]
    operations: tuple[Followed, ...]
    statements: tuple[Statement, ...]
