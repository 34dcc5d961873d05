"""Over many operations at once: what still must not wait, and what is to be thought of today."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.followup.aftercare import Aftercare
from planner.followup.warnings import standing_warnings
from planner.followup.warnings.infection import window
from planner.limits import Length, Unique
from planner.records.plan import RecordId
from planner.values.follow_up import Watched


@dataclass(frozen=True, kw_only=True)
class Followed:
    """An operation by the id under which it is told, with what followed it."""

    id: RecordId
    care: Aftercare


@dataclass(frozen=True, kw_only=True)
class Question:
    """Those operations of which something may have to be said."""

    operations: Annotated[tuple[Followed, ...], Length(0, 500), Unique(("id",))]


def watched(asked: Question) -> tuple[Watched, ...]:
    """In the order in which they were asked."""
    return tuple(_watched(each) for each in asked.operations)


def _watched(followed: Followed) -> Watched:
    care = followed.care
    visits = care.visits
    last = visits[-1] if visits else None
    return Watched(
        id=followed.id,
        visit=last.follow_up.visit if last else None,
        seen_on=last.follow_up.seen_on if last else None,
        warnings=standing_warnings(care, visits),
        notices=tuple(window(care)),
    )
