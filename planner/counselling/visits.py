"""The visits of a clinic that set its own: in the largest unit that tells their two days apart."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from planner.counselling.saying import origin, says
from planner.records.follow_up import PlannedVisit
from planner.setup.visits import UsualVisits
from planner.values.counselling import Passage, Said

WEEK, MONTH, YEAR = 7, 365.25 / 12, 365.25
IN_WEEKS_FROM, IN_MONTHS_FROM, IN_YEARS_FROM = 14, 120, 600
"""Earlier days are told in the smaller unit."""
OFF_A_YEAR: Final = 60
"""A visit is told in years where both of its days lie so near to a whole year."""


def own_visits(usual: UsualVisits) -> Iterator[Passage]:
    """A sentence for each; nothing where the visits are those of common practice."""
    if usual.is_own:
        yield Passage(
            code="visits",
            heading=says("Visits after the operation"),
            sentences=tuple(_said(visit) for visit in usual.planned),
            origin=origin(usual.provenance),
        )


def _said(visit: PlannedVisit) -> Said:
    first, last = visit.first_day, visit.last_day
    years = round((first + last) / 2 / YEAR)
    if first >= IN_YEARS_FROM and max(abs(first - years * YEAR), abs(last - years * YEAR)) <= OFF_A_YEAR:
        return says("A visit is usually about {years} years after the operation.", years=f"{years}")
    if first >= IN_MONTHS_FROM and round(first / MONTH) < round(last / MONTH):
        months = (f"{round(first / MONTH)}", f"{round(last / MONTH)}")
        return says("A visit is usually about {first} to {last} months after the operation.", **_both(months))
    if first >= IN_WEEKS_FROM and round(first / WEEK) < round(last / WEEK):
        weeks = (f"{round(first / WEEK)}", f"{round(last / WEEK)}")
        return says("A visit is usually about {first} to {last} weeks after the operation.", **_both(weeks))
    if first < last:
        both = _both((f"{first}", f"{last}"))
        return says("A visit is usually between day {first} and day {last} after the operation.", **both)
    return says("A visit is usually on day {day} after the operation.", day=f"{first}")


def _both(figures: tuple[str, str]) -> dict[str, str]:
    return {"first": figures[0], "last": figures[1]}
