"""The visits after an operation that are usual, and the clinic's own in their place."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from planner.errors import Fault
from planner.provenance import Mark, Provenance
from planner.records.follow_up import PlannedVisit
from planner.records.practice import Practice
from planner.setup.figures import source

USUAL: Final = Provenance(
    mark=Mark.COMMON_PRACTICE, source="when patients are usually seen after squint surgery; the clinic's own days first"
)
USUAL_VISITS: Final = (
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


@dataclass(frozen=True, kw_only=True)
class UsualVisits:
    """The visits that hold where nothing else was planned for a patient, and whose they are."""

    planned: tuple[PlannedVisit, ...]
    is_own: bool
    provenance: Provenance


def usual_visits(practice: Practice | None) -> UsualVisits:
    """The clinic's own where it set any, else those of common practice."""
    if practice is None or practice.visits is None:
        return UsualVisits(planned=USUAL_VISITS, is_own=False, provenance=USUAL)
    own = Provenance(mark=Mark.CLINICS_OWN, source=source(practice))
    return UsualVisits(planned=by_day(practice.visits), is_own=True, provenance=own)


def by_day(planned: Sequence[PlannedVisit]) -> tuple[PlannedVisit, ...]:
    """By their days."""
    return tuple(sorted(planned, key=lambda visit: (visit.first_day, visit.last_day, visit.name)))


def misplaced(planned: Sequence[PlannedVisit], where: str) -> Iterator[Fault]:
    """The visits that end before they begin."""
    for place, visit in enumerate(planned):
        if visit.last_day < visit.first_day:
            yield Fault(
                code="visit_ends_first",
                text=f"{visit.name}: the visit ends before it begins.",
                field=f"{where}.{place}.last_day",
                value=str(visit.last_day),
                allowed=f"{visit.first_day} or later",
            )
