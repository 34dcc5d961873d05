"""What the horizontal recti that were operated are expected to leave, read muscle by muscle from the columns.

The column of a muscle is the one that dosed it in the plan; of one that was not planned so, the column for the same
muscle of both eyes where both were done, else for both muscles of one eye where both were, else for both eyes, as the
doubling rule takes it.
"""

from __future__ import annotations

from math import fsum

from planner.anatomy import Muscle
from planner.direction import Direction
from planner.dosing.effect import effect_of
from planner.operation.limits import source
from planner.operation.works import where, work_words
from planner.provenance import Mark, Provenance
from planner.records.operation import MuscleWork, OperatedMuscle, OperationRecord
from planner.records.plan import Plan
from planner.series import Series
from planner.situation import Situation
from planner.tables import Column, Form
from planner.thresholds import same
from planner.values.option import Dose, Family, Operation
from planner.values.statement import Statement

HORIZONTAL = (Muscle.MR, Muscle.LR)
BY_TABLE = (Operation.RECESS, Operation.RESECT)
NO_COLUMN = Provenance(mark=Mark.HOUSE_RULE, source="no figure is made up for what no table answers")
FORMS = {Family.BOTH_EYES: Form.BOTH, Family.ONE_EYE: Form.ONE}

Residual = tuple[float | None, tuple[Dose, ...], tuple[Statement, ...]]


def residual(situation: Situation, plan: Plan, record: OperationRecord) -> Residual:
    """What is left of the target in Δ (eso +), None where a muscle has no column; the doses done, and why not."""
    if same(situation.target.horizontal_pd, 0.0):
        return None, (), ()
    operated = [(each, each.done) for each in record.muscles if each.done and each.muscle in HORIZONTAL]
    row_pd = _row_pd(situation, plan)
    effects: list[float] = []
    untold: list[Statement] = []
    for muscle, work in operated:
        column = _column(situation, plan, record, muscle, work)
        if column is None or work.mm is None:
            untold.append(_no_column(muscle, work))
        else:
            effects.append(_direction(muscle, work).sign * effect_of(column, work.mm, row_pd).pd)
    doses = tuple(_dose(muscle, work) for muscle, work in operated)
    if untold:
        return None, doses, tuple(untold)
    return round(situation.target.horizontal_pd - fsum(effects), 1) + 0.0, doses, ()


def _row_pd(situation: Situation, plan: Plan) -> float:
    """The row that the plan stood on: where several rows have one dose, what is nearest to it is meant."""
    if isinstance(source(plan), Series):
        return situation.dosed_pd
    planned = sum(dose.muscle in HORIZONTAL and dose.operation in BY_TABLE for dose in plan.option.doses)
    return 2 * situation.dosed_pd / max(planned, 1)


def _direction(muscle: OperatedMuscle, work: MuscleWork) -> Direction:
    """The deviation that this work is for."""
    recessed = work.operation is Operation.RECESS
    return next(each for each in Direction if muscle.muscle is (each.recessed if recessed else each.resected))


def _column(
    situation: Situation, plan: Plan, record: OperationRecord, muscle: OperatedMuscle, work: MuscleWork
) -> Column | None:
    if work.operation not in BY_TABLE or work.offset is not None:
        return None
    as_planned = muscle.planned is not None and muscle.planned.operation is work.operation
    doses = source(plan)
    if isinstance(doses, Series):
        return doses.column if as_planned else None
    form = FORMS.get(plan.option.family) if as_planned else None
    found = form or _form(record, muscle, work)
    return situation.table.columns.get((_direction(muscle, work), found, work.operation))


def _form(record: OperationRecord, muscle: OperatedMuscle, work: MuscleWork) -> Form:
    done = {(each.eye, each.muscle): each.done.operation for each in record.muscles if each.done}
    if done.get((muscle.eye.other, muscle.muscle)) is work.operation:
        return Form.BOTH
    antagonist = Muscle.LR if muscle.muscle is Muscle.MR else Muscle.MR
    opposite = Operation.RESECT if work.operation is Operation.RECESS else Operation.RECESS
    return Form.ONE if done.get((muscle.eye, antagonist)) is opposite else Form.BOTH


def _dose(muscle: OperatedMuscle, work: MuscleWork) -> Dose:
    return Dose(
        eye=muscle.eye,
        muscle=muscle.muscle,
        operation=work.operation,
        mm=work.mm,
        table_mm=work.mm,
        changed=muscle.planned is None or muscle.planned != work,
        insertion_mm=muscle.insertion_mm,
        limbus_mm=muscle.limbus_mm,
        steps=(),
    )


def _no_column(muscle: OperatedMuscle, work: MuscleWork) -> Statement:
    return Statement(
        code="no_column",
        text=f"{where(muscle)}, {work_words(work)}: no column of the plan's table answers this: no residual is told.",
        provenance=NO_COLUMN,
        facts={"eye": muscle.eye.value, "muscle": muscle.muscle.value},
    )
