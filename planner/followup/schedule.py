"""When a patient is seen after an operation."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from planner.provenance import Mark, Provenance
from planner.records.follow_up import FollowUp, PlannedVisit

USUAL = Provenance(
    mark=Mark.COMMON_PRACTICE, source="when patients are usually seen after squint surgery; the clinic's own days first"
)
USUAL_VISITS = (
    PlannedVisit(name="Day 1", first_day=1, last_day=2),
    PlannedVisit(name="Week 1", first_day=5, last_day=10),
    PlannedVisit(name="Weeks 6 to 8", first_day=42, last_day=56),
    PlannedVisit(name="Month 6", first_day=150, last_day=210),
    PlannedVisit(name="Year 1", first_day=330, last_day=400),
    PlannedVisit(name="Year 2", first_day=695, last_day=765),
    PlannedVisit(name="Year 3", first_day=1060, last_day=1130),
    PlannedVisit(name="Year 4", first_day=1425, last_day=1495),
    PlannedVisit(name="Year 5", first_day=1790, last_day=1860),
)


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
    operated_on: str, follow_ups: Sequence[FollowUp], usual: Sequence[PlannedVisit] = USUAL_VISITS
) -> tuple[PlannedVisit, ...]:
    """The visits of an operation in order: the usual ones, as each follow-up planned anew what lay ahead of it."""
    visits = list(usual)
    for each in in_order(follow_ups):
        if each.ahead is not None:
            days = days_between(operated_on, each.seen_on)
            kept = [visit for visit in visits if visit.last_day <= days or visit.name == each.visit]
            names = {visit.name for visit in each.ahead}
            visits = [visit for visit in kept if visit.name not in names] + list(each.ahead)
    return tuple(sorted(visits, key=lambda visit: (visit.first_day, visit.last_day, visit.name)))
