"""One operation with everything that followed it, and the alignment of each visit."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Annotated

from planner.errors import Refused
from planner.findings import target
from planner.followup.schedule import days_between
from planner.limits import IsoDate, Length
from planner.measurement import Figure, Measurements, measure
from planner.precision.limits import Direction
from planner.records.examination import Correction, Examination, Gaze, Range
from planner.records.follow_up import FollowUp
from planner.records.operation import Adjustment, OperationRecord
from planner.records.plan import Plan
from planner.records.technique import Condition


@dataclass(frozen=True, kw_only=True)
class Attended:
    """A visit and the examination that was measured at it."""

    follow_up: FollowUp
    examination: Examination | None = None


@dataclass(frozen=True, kw_only=True)
class Aftercare:
    """What was signed, done, adjusted and seen. ``today`` is null where nothing is to be said of today."""

    plan: Plan
    operation: OperationRecord
    adjustment: Adjustment | None = None
    attended: Annotated[tuple[Attended, ...], Length(0, 60)] = ()
    today: Annotated[str, IsoDate()] | None = None

    def days_after(self, on: str) -> int:
        """Days from the operation to a date."""
        return days_between(self.operation.operated_on, on)

    @cached_property
    def before(self) -> Alignment:
        """The deviation that was planned for; without figures where this engine refuses the plan's readings."""
        examination = self.plan.case.examination
        try:
            measurements = measure(examination)
            correction = target(measurements, self.plan.case.aim).reading.correction
        except Refused:
            return Alignment(examination=examination, measurements=None, correction=Correction.WITH)
        return Alignment(examination=examination, measurements=measurements, correction=correction)

    @cached_property
    def visits(self) -> tuple[Visited, ...]:
        """The visits in the order of their days."""
        return tuple(self._visited(each) for each in sorted(self.attended, key=lambda each: each.follow_up.seen_on))

    def _visited(self, attended: Attended) -> Visited:
        refusal: Refused | None = None
        measurements: Measurements | None = None
        if attended.examination is not None:
            try:
                measurements = measure(attended.examination)
            except Refused as refused:
                refusal = refused
        alignment = Alignment(
            examination=attended.examination, measurements=measurements, correction=self.before.correction
        )
        days_after = self.days_after(attended.follow_up.seen_on)
        return Visited(follow_up=attended.follow_up, days_after=days_after, alignment=alignment, refusal=refusal)


@dataclass(frozen=True, kw_only=True)
class Alignment:
    """The primary position of an examination, read with the plan's correction where it was measured so."""

    examination: Examination | None
    measurements: Measurements | None
    correction: Correction

    def figure(self, direction: Direction, at: Range) -> Figure | None:
        """The figure of a direction at a range, with the other correction where there is no other."""
        if self.measurements is None:
            return None
        found = self.measurements.horizontals if direction is Direction.HORIZONTAL else self.measurements.verticals
        for correction in sorted(Correction, key=lambda each: each is not self.correction):
            figure = found.get((Gaze.PRIMARY, at, correction, Condition.PLAIN))
            if figure is not None:
                return figure
        return None

    def values(self, direction: Direction) -> tuple[tuple[Range, float], ...]:
        """What was measured of a direction, by range."""
        figures = ((at, self.figure(direction, at)) for at in Range)
        return tuple((at, figure.value_pd) for at, figure in figures if figure is not None)


@dataclass(frozen=True, kw_only=True)
class Visited:
    """A visit and its alignment; ``refusal`` says why the readings cannot be read."""

    follow_up: FollowUp
    days_after: int
    alignment: Alignment
    refusal: Refused | None
