"""The most that may be done to a muscle at this operation."""

from __future__ import annotations

from dataclasses import dataclass
from math import fsum

from planner import tables
from planner.anatomy import Eye, Muscle
from planner.errors import Refused
from planner.maxima import maximum_of
from planner.records.dose_table import OwnMaximum
from planner.records.examination import PastOperation
from planner.records.operation import MuscleWork, OperatedMuscle
from planner.records.plan import Plan
from planner.series import Series, series
from planner.tables import Table
from planner.values.option import Operation


@dataclass(frozen=True, kw_only=True)
class Limit:
    """``usual_mm`` and ``widest_mm`` as taught, or as far as the plan's source or the signed plan itself goes.

    ``spent_mm`` is what earlier operations took of the widest: recorded ones of the same kind on that muscle.
    """

    usual_mm: float
    widest_mm: float
    spent_mm: float


def limit(plan: Plan, muscle: OperatedMuscle, done: MuscleWork) -> Limit | None:
    """The limits of what was done; None where none are taught, as for the obliques."""
    taught = maximum_of(muscle.muscle, done.operation, plan.option.family)
    if taught is None or done.mm is None:
        return None
    own = _own(plan, muscle.muscle, done.operation)
    signed_mm = 0.0
    if muscle.planned and muscle.planned.operation is done.operation:
        signed_mm = muscle.planned.mm or 0.0
    return Limit(
        usual_mm=taught.usual_mm,
        widest_mm=max(taught.widest_mm, own.mm if own else 0.0, signed_mm),
        spent_mm=_spent_mm(plan, muscle.eye, muscle.muscle, done),
    )


def source(plan: Plan) -> Table | Series:
    """What dosed the plan."""
    own = plan.option.table
    found = next((each for each in series() if own and each.stamp.id == own.id), None)
    return found or tables.chosen(plan.case.table, plan.case.clinic_table)


def _own(plan: Plan, muscle: Muscle, operation: Operation) -> OwnMaximum | None:
    """What the plan's source went to; nothing where this engine does not know the source."""
    try:
        return source(plan).maxima.get((muscle, operation))
    except Refused:
        return None


def _spent_mm(plan: Plan, eye: Eye, muscle: Muscle, done: MuscleWork) -> float:
    return fsum(
        each.mm or 0.0
        for each in plan.case.examination.previous_operations
        if (each.eye, each.muscle) == (eye, muscle)
        and each.operation in (PastOperation.RECESS, PastOperation.RESECT)
        and each.operation.value == done.operation.value
    )
