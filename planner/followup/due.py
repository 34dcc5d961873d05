"""Who is to be seen now, and who should have been."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Annotated

from planner.card.words import date_words
from planner.followup.schedule import day_after, days_between, in_order, planned
from planner.limits import IsoDate, Length, Unique
from planner.records.follow_up import FollowUp
from planner.records.plan import RecordId
from planner.records.practice import Practice
from planner.setup.visits import UsualVisits, usual_visits
from planner.values.follow_up import Attendance, Followed, Visit, VisitState
from planner.values.statement import Statement


@dataclass(frozen=True, kw_only=True)
class Operated:
    """An operation by the id under which it is told. ``ended_on`` is the day from which its visits count no longer.

    That is when either eye was operated again, for the visits are then of the later operation.
    """

    id: RecordId
    operated_on: Annotated[str, IsoDate()]
    follow_ups: Annotated[tuple[FollowUp, ...], Length(0, 60)] = ()
    ended_on: Annotated[str, IsoDate()] | None = None


@dataclass(frozen=True, kw_only=True)
class Question:
    """``practice`` is the clinic's own: its visits hold where nothing else was planned, else the usual ones."""

    today: Annotated[str, IsoDate()]
    operations: Annotated[tuple[Operated, ...], Length(0, 20_000), Unique(("id",))]
    practice: Practice | None = None

    @cached_property
    def usual(self) -> UsualVisits:
        """The visits where nothing else was planned."""
        return usual_visits(self.practice)


@dataclass(frozen=True, kw_only=True)
class Follows:
    """What is known of what comes after a visit: a later one was kept, or the time of the next has begun."""

    is_kept: bool
    has_begun: bool


def due(asked: Question) -> Attendance:
    """Every operation with its visits, and who comes first."""
    followed = [_followed(each, asked) for each in asked.operations]
    by_state = {
        state: [each for each in followed if each.next and each.next.state is state]
        for state in (VisitState.OVERDUE, VisitState.DUE)
    }
    return Attendance(
        today=asked.today,
        overdue=tuple(each.id for each in sorted(by_state[VisitState.OVERDUE], key=_end)),
        due=tuple(each.id for each in sorted(by_state[VisitState.DUE], key=_end)),
        operations=tuple(followed),
        statements=(_why(asked.usual),),
    )


def _end(followed: Followed) -> tuple[str, str]:
    return (followed.next.to_on if followed.next else "", followed.id)


def _followed(operated: Operated, asked: Question) -> Followed:
    plans = [
        each
        for each in planned(operated.operated_on, operated.follow_ups, asked.usual.planned)
        if operated.ended_on is None or day_after(operated.operated_on, each.first_day) < operated.ended_on
    ]
    seen = {each.visit: each.seen_on for each in in_order(operated.follow_ups)}
    last_kept = max((place for place, each in enumerate(plans) if each.name in seen), default=-1)
    is_ended = operated.ended_on is not None and operated.ended_on <= asked.today
    begins = [day_after(operated.operated_on, each.first_day) for each in plans[1:]]
    visits = []
    for place, each in enumerate(plans):
        days = (day_after(operated.operated_on, each.first_day), day_after(operated.operated_on, each.last_day))
        follows = Follows(
            is_kept=is_ended or place < last_kept, has_begun=any(on <= asked.today for on in begins[place : place + 1])
        )
        visits.append(_visit(each.name, days, asked.today, seen.get(each.name), follows))
    to_keep = (VisitState.OVERDUE, VisitState.DUE, VisitState.AHEAD)
    names = {each.name for each in plans}
    return Followed(
        id=operated.id,
        visits=tuple(visits),
        next=next((each for each in visits if each.state in to_keep), None),
        unplanned=tuple(each.seen_on for each in in_order(operated.follow_ups) if each.visit not in names),
    )


def _visit(name: str, days: tuple[str, str], today: str, seen_on: str | None, follows: Follows) -> Visit:
    state = _state(days, today, follows, is_seen=seen_on is not None)
    days_over = days_between(days[1], today) if state is VisitState.OVERDUE else 0
    return Visit(
        name=name,
        from_on=days[0],
        to_on=days[1],
        state=state,
        seen_on=seen_on,
        days_over=days_over,
        words=_words(name, days, state, seen_on, days_over),
    )


def _state(days: tuple[str, str], today: str, follows: Follows, *, is_seen: bool) -> VisitState:
    """While its days last a visit is due, even where the next has begun; after them the next takes its place."""
    from_on, to_on = days
    if is_seen:
        return VisitState.SEEN
    if follows.is_kept or (follows.has_begun and to_on < today):
        return VisitState.MISSED
    if today < from_on:
        return VisitState.AHEAD
    return VisitState.DUE if today <= to_on else VisitState.OVERDUE


def _words(name: str, days: tuple[str, str], state: VisitState, seen_on: str | None, days_over: int) -> str:
    from_on, to_on = map(date_words, days)
    match state:
        case VisitState.SEEN:
            return f"{name}: seen on {date_words(seen_on or days[0])}."
        case VisitState.AHEAD:
            return f"{name}: from {from_on} to {to_on}."
        case VisitState.DUE:
            return f"{name}: due now, until {to_on}."
        case VisitState.OVERDUE:
            return f"{name}: overdue since {to_on}, {days_over} {'day' if days_over == 1 else 'days'}."
        case VisitState.MISSED:
            return f"{name}: missed, it was due until {to_on}."


def _why(usual: UsualVisits) -> Statement:
    names = ", ".join(each.name for each in usual.planned)
    return Statement(
        code="usual_visits",
        text=f"Planned {'in this clinic ' if usual.is_own else ''}unless a visit planned otherwise: {names}.",
        provenance=usual.provenance,
        facts={"visits": float(len(usual.planned))},
    )
