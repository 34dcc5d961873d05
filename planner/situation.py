"""What is known about a case when options are weighed: one value that rules and reasons read."""

from __future__ import annotations

from dataclasses import dataclass
from math import fsum

from planner.anatomy import Eye, Muscle
from planner.direction import Direction, direction_of
from planner.findings import Findings
from planner.measurement import Measurements
from planner.records.case import Case
from planner.records.diagnosis import Diagnosis
from planner.records.examination import Examination, PastOperation, PreviousOperation
from planner.tables import Table
from planner.values.option import Operation
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

    @property
    def sensory_eye(self) -> Eye | None:
        """The eye of which a sensory deviation was diagnosed, if it is one."""
        eyes = {each.eye for each in self.examination.diagnoses if each.diagnosis is Diagnosis.SENSORY_DEVIATION}
        return eyes.pop() if len(eyes) == 1 else None

    @property
    def poorer_eye(self) -> Eye | None:
        """The eye that sees less, by the acuities or else by the diagnosis."""
        return self.findings.vision.poorer or self.sensory_eye

    @property
    def dosed_pd(self) -> float:
        """The deviation without its sign, and the early overcorrection that the surgeon wants on top of it."""
        return self.size_pd + self.case.overcorrection_pd

    @property
    def intended_pd(self) -> float:
        """What is meant to be there early after surgery, eso +."""
        return -self.direction.sign * self.case.overcorrection_pd

    def axial_length_mm(self, eye: Eye) -> float | None:
        """The eye's axial length, if it was measured."""
        examination = self.examination
        return examination.axial_length_right_mm if eye is Eye.RIGHT else examination.axial_length_left_mm

    def earlier(self, eye: Eye, muscle: Muscle) -> tuple[PreviousOperation, ...]:
        """What was done to that muscle before."""
        return tuple(each for each in self.examination.previous_operations if (each.eye, each.muscle) == (eye, muscle))

    def spent_mm(self, eye: Eye, muscle: Muscle, operation: Operation) -> float | None:
        """How far earlier operations went the same way on that muscle; None where that is not known."""
        spent: list[float] = []
        for each in self.earlier(eye, muscle):
            if each.operation.value == operation.value and each.mm is not None:
                spent.append(each.mm)
            elif each.operation.value in (operation.value, PastOperation.OTHER, PastOperation.UNKNOWN):
                return None
        return fsum(spent)
