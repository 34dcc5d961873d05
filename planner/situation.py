"""What is known about a case when options are weighed: one value that rules and reasons read."""

from __future__ import annotations

from dataclasses import dataclass

from planner.anatomy import Eye, Muscle
from planner.direction import Direction, direction_of
from planner.findings import Findings
from planner.measurement import Measurements
from planner.records.case import Case
from planner.records.examination import Examination, PreviousOperation
from planner.tables import Table
from planner.values.proposal import Target


@dataclass(frozen=True, kw_only=True)
class Situation:
    """A case with its table, its figures, its target and its findings."""

    case: Case
    table: Table
    measurements: Measurements
    target: Target
    findings: Findings

    @property
    def examination(self) -> Examination:
        """What was measured."""
        return self.case.examination

    @property
    def direction(self) -> Direction:
        """Eso or exo."""
        return direction_of(self.target.horizontal_pd)

    @property
    def size_pd(self) -> float:
        """The deviation without its sign."""
        return abs(self.target.horizontal_pd)

    def earlier(self, eye: Eye, muscle: Muscle) -> tuple[PreviousOperation, ...]:
        """What was done to that muscle before."""
        return tuple(each for each in self.examination.previous_operations if (each.eye, each.muscle) == (eye, muscle))
