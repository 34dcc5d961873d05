"""What the engine says of visits after operations."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.errors import Fault
from planner.records.follow_up import PlannedVisit
from planner.values.picture import Picture
from planner.values.statement import Notice, Statement


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


@dataclass(frozen=True, kw_only=True)
class Band:
    """What the signed plan expected of a deviation: mean and 95 % interval, with the deviation's sign."""

    mean_pd: float
    low_pd: float
    high_pd: float


@dataclass(frozen=True, kw_only=True)
class Point:
    """A deviation on a day. ``limits_pd``: its 95 % limits, null where it is told as it was read.

    ``is_inside`` the expected interval, null where there is none. ``other_correction``: with glasses where the plan
    was made without them, or the other way round.
    """

    on: str
    days_after: int
    at: str
    value_pd: float
    limits_pd: float | None
    is_inside: bool | None
    other_correction: bool


@dataclass(frozen=True, kw_only=True)
class Line:
    """The primary position at one range over time: before the operation, expected after it, and what was found."""

    before_pd: float | None
    expected: Band | None
    points: tuple[Point, ...]


@dataclass(frozen=True, kw_only=True)
class Ranges:
    """One direction of the deviation at both ranges."""

    distance: Line
    near: Line


@dataclass(frozen=True, kw_only=True)
class Kept:
    """A visit that was kept, what cannot wait of it, and what must be known to read it."""

    visit: str
    seen_on: str
    days_after: int
    warnings: tuple[Notice, ...]
    statements: tuple[Statement, ...]


@dataclass(frozen=True, kw_only=True)
class Course:
    """An operation over time: eso +, right hyper +. ``notices`` are of today, ``statements`` say what is drawn.

    ``warnings`` are those that still stand after all visits. ``pictures`` are the lines drawn: the horizontal ones, and
    the vertical ones where there is a vertical deviation.
    """

    operated_on: str
    horizontal: Ranges
    vertical: Ranges
    visits: tuple[Kept, ...]
    warnings: tuple[Notice, ...]
    notices: tuple[Notice, ...]
    statements: tuple[Statement, ...]
    pictures: tuple[Picture, ...]
    disclaimer: str


@dataclass(frozen=True, kw_only=True)
class Planned:
    """A planned visit by its days and by its dates."""

    visit: PlannedVisit
    from_on: str
    to_on: str
    is_kept: bool


@dataclass(frozen=True, kw_only=True)
class VisitDraft:
    """A visit on a day: which planned one it is by the day, null for none, and what is planned after it."""

    days_after: int
    proposed: str | None
    planned: tuple[Planned, ...]
    ahead: tuple[Planned, ...]
    statements: tuple[Statement, ...]


@dataclass(frozen=True, kw_only=True)
class VisitReview:
    """A visit before it is saved: what keeps it from that, what must not wait of it, what must be known to read it."""

    hindrances: tuple[Fault, ...]
    warnings: tuple[Notice, ...]
    statements: tuple[Statement, ...]


@dataclass(frozen=True, kw_only=True)
class Watched:
    """Of one operation its latest visit, the warnings that still stand, and the notices of today."""

    id: str
    visit: str | None
    seen_on: str | None
    warnings: tuple[Notice, ...]
    notices: tuple[Notice, ...]
