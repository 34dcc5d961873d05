"""When a patient is seen after an operation."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from planner.records.follow_up import FollowUp, PlannedVisit
from planner.setup.visits import by_day


def days_between(earlier: str, later: str) -> int:
    """Days from one calendar date to another, negative where the second comes first."""
    return (date.fromisoformat(later) - date.fromisoformat(earlier)).days


def day_after(operated_on: str, days: int) -> str:
    """The calendar date so many days later, the last day of the calendar where it would lie beyond."""
    try:
        return (date.fromisoformat(operated_on) + timedelta(days=days)).isoformat()
    except OverflowError:
        return date.max.isoformat()


def in_order(follow_ups: Sequence[FollowUp]) -> list[FollowUp]:
    """By the day on which the patient was seen; of one day as given."""
    return sorted(follow_ups, key=lambda each: each.seen_on)


def planned(
    operated_on: str, follow_ups: Sequence[FollowUp], usual: Sequence[PlannedVisit]
) -> tuple[PlannedVisit, ...]:
    """The visits of an operation in order: the usual ones, as each follow-up planned anew what lay ahead of it."""
    plans = list(usual)
    for each in in_order(follow_ups):
        if each.ahead is not None:
            days = days_between(operated_on, each.seen_on)
            kept = [visit for visit in plans if visit.last_day <= days or visit.name == each.visit]
            names = {visit.name for visit in each.ahead}
            plans = [visit for visit in kept if visit.name not in names] + list(each.ahead)
    return by_day(plans)
