"""A visit that is about to be recorded: which of the planned ones it is, and what is planned after it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Annotated

from planner.followup.schedule import day_after, days_between, planned
from planner.limits import IsoDate, Length
from planner.provenance import Mark, Provenance
from planner.records.follow_up import FollowUp, PlannedVisit
from planner.records.practice import Practice
from planner.setup.visits import UsualVisits, usual_visits
from planner.values.follow_up import Planned, VisitDraft
from planner.values.statement import Statement

NEAREST = Provenance(
    mark=Mark.HOUSE_RULE,
    source=(
        "a visit is taken for the nearest planned one not yet kept: late by no more days than that one lasts, early by "
        "less than half of them"
    ),
)


@dataclass(frozen=True, kw_only=True)
class Coming:
    """A patient who comes on a day after an operation; ``follow_ups`` are the visits kept, without this one."""

    operated_on: Annotated[str, IsoDate()]
    seen_on: Annotated[str, IsoDate()]
    follow_ups: Annotated[tuple[FollowUp, ...], Length(0, 60)] = ()
    practice: Practice | None = None


def draft(coming: Coming) -> VisitDraft:
    """The visit by its day; before the operation nothing is proposed."""
    days = days_between(coming.operated_on, coming.seen_on)
    usual = usual_visits(coming.practice)
    visits = planned(coming.operated_on, coming.follow_ups, usual.planned)
    kept = {each.visit for each in coming.follow_ups}
    proposed = _proposed([each for each in visits if each.name not in kept], days)
    told = tuple(_told(each, coming.operated_on, kept) for each in visits)
    return VisitDraft(
        days_after=days,
        proposed=proposed,
        planned=told,
        ahead=tuple(each for each in told if each.visit.first_day > days and each.visit.name != proposed),
        statements=tuple(_statements(proposed, usual)),
    )


def _proposed(visits: Sequence[PlannedVisit], days: int) -> str | None:
    if days < 0:
        return None
    near = [each for each in visits if _is_near(each, days)]
    return min(near, key=lambda each: (_off(each, days), each.first_day)).name if near else None


def _is_near(visit: PlannedVisit, days: int) -> bool:
    lasts = visit.last_day - visit.first_day + 1
    return days - visit.last_day <= lasts and visit.first_day - days < lasts / 2


def _off(visit: PlannedVisit, days: int) -> int:
    """By how many days the visit is missed; 0 on its own days."""
    return max(visit.first_day - days, days - visit.last_day, 0)


def _told(visit: PlannedVisit, operated_on: str, kept: set[str]) -> Planned:
    return Planned(
        visit=visit,
        from_on=day_after(operated_on, visit.first_day),
        to_on=day_after(operated_on, visit.last_day),
        is_kept=visit.name in kept,
    )


def _statements(proposed: str | None, usual: UsualVisits) -> list[Statement]:
    by_day = (
        f"By its day this is {proposed}."
        if proposed
        else "By its day this is none of the planned visits: give it a name."
    )
    return [
        Statement(code="by_its_day", text=by_day, provenance=NEAREST, facts={}),
        Statement(
            code="usual_days", text="The days are those of the plan of visits.", provenance=usual.provenance, facts={}
        ),
    ]
