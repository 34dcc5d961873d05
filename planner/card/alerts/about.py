"""What alerts are made of."""

from __future__ import annotations

from dataclasses import dataclass

from planner.records.examination import Examination
from planner.records.patient import Patient
from planner.records.plan import Plan
from planner.values.option import Dose


@dataclass(frozen=True, kw_only=True)
class About:
    """A plan, and one version of its patient's record."""

    patient: Patient
    plan: Plan

    @property
    def examination(self) -> Examination:
        """What was measured."""
        return self.plan.case.examination

    @property
    def doses(self) -> tuple[Dose, ...]:
        """What is operated."""
        return self.plan.option.doses
