"""The engine's view of what was done: what its table expects of it, beside what the signed plan expected.

Where the same muscles were operated in the same way, only by other millimetres, the plan's own case is answered again
with the millimetres that were done. Where a muscle was added, left out or operated in another way, each horizontal
rectus is read backwards in the column that doses it, and the effects add up; of other deviations nothing is said then,
and no figure is given where a column is missing.
"""

from __future__ import annotations

from dataclasses import replace

from planner import tables
from planner.errors import Refused
from planner.findings import find, target
from planner.measurement import measure
from planner.operation.horizontal import residual
from planner.operation.works import planned_work
from planner.outlook import outlook
from planner.proposal import propose
from planner.provenance import Mark, Provenance
from planner.records.case import Aim, Case, Change
from planner.records.operation import OperationRecord
from planner.records.plan import Plan
from planner.situation import Situation
from planner.thresholds import same
from planner.values.operation import Effect
from planner.values.option import Family, Option
from planner.values.prediction import Outcome, Prediction
from planner.values.statement import Statement
from planner.version import ENGINE_VERSION

AGAIN = Provenance(mark=Mark.COMPUTED, source="the plan's own case, answered again with the millimetres that were done")
COLUMNS = Provenance(mark=Mark.COMPUTED, source="each muscle read backwards in the column that doses it, effects added")
UNTOLD = Provenance(mark=Mark.HOUSE_RULE, source="no figure is made up for what no table answers")
VERSIONS = Provenance(mark=Mark.HOUSE_RULE, source="what was signed stays signed; a newer engine may see it otherwise")


def effect(plan: Plan, record: OperationRecord) -> Effect:
    """What was planned and what was done, as the engine sees both."""
    again = _answered_again(plan, record)
    if again is not None:
        text = "The plan's own case, answered again with the millimetres that were done."
        said = _said("answered_again", text, AGAIN)
        return _effect(plan, again.expected_residual_pd, again.prediction, again, (said,))
    situation = _situation(plan.case)
    if situation is None:
        text = "This engine does not answer the plan's case, so what was done is not weighed."
        return _effect(plan, None, None, None, (_said("not_answered", text, UNTOLD),))
    left_pd, doses, statements = residual(situation, plan, record)
    prediction = None if left_pd is None else outlook(situation).of(doses, left_pd)
    if left_pd is not None:
        text = "Not the planned muscles: each is read backwards in its column, and the effects add up."
        statements = (_said("columns_read", text, COLUMNS), *statements)
    if plan.option.expected:
        text = "What it does to other deviations than the horizontal is not worked out for a changed operation."
        statements = (*statements, _said("others_untold", text, UNTOLD))
    return _effect(plan, left_pd, prediction, None, statements)


def _effect(
    plan: Plan,
    residual_pd: float | None,
    done: Prediction | None,
    option: Option | None,
    statements: tuple[Statement, ...],
) -> Effect:
    if plan.engine_version != ENGINE_VERSION:
        text = f"The plan was made by engine {plan.engine_version}; engine {ENGINE_VERSION} looks at what was done."
        statements = (*statements, _said("other_engine", text, VERSIONS))
    has_horizontal = plan.option.prediction is not None
    return Effect(
        planned_residual_pd=plan.option.expected_residual_pd if has_horizontal else None,
        done_residual_pd=residual_pd if has_horizontal else None,
        planned=_aimed(plan.case, plan.option.prediction),
        done=_aimed(plan.case, done),
        expected=option.expected if option else (),
        statements=statements,
    )


def _aimed(case: Case, prediction: Prediction | None) -> Outcome | None:
    if prediction is None:
        return None
    return prediction.near if case.aim is Aim.NEAR else prediction.distance


def _answered_again(plan: Plan, record: OperationRecord) -> Option | None:
    """The plan's option with the millimetres that were done; None where more than millimetres differs."""
    done = {(each.eye, each.muscle): each.done for each in record.muscles if each.done is not None}
    planned = {(dose.eye, dose.muscle): planned_work(dose) for dose in plan.option.doses}
    if done.keys() != planned.keys() or len(planned) != len(plan.option.doses):
        return None
    changes: list[Change] = []
    for key, work in planned.items():
        was = done[key]
        if (was.operation, was.offset) != (work.operation, work.offset) or (was.mm is None) != (work.mm is None):
            return None
        if was.mm is not None and work.mm is not None and not same(was.mm, work.mm):
            eye, muscle = key
            changes.append(Change(option=plan.option.id, eye=eye, muscle=muscle, mm=was.mm))
    try:
        return _option(plan, tuple(changes))
    except Refused:
        return None


def _option(plan: Plan, changes: tuple[Change, ...]) -> Option | None:
    """:class:`Refused` where this engine does not answer the case or the changes."""
    if plan.option.family is Family.COMBINED:
        owned = _owned(plan.case, changes)
        if owned is None:
            return None
        changes = owned
    set_anew = {(each.option, each.eye, each.muscle) for each in changes}
    kept = tuple(each for each in plan.case.changes if (each.option, each.eye, each.muscle) not in set_anew)
    proposal = propose(replace(plan.case, changes=(*kept, *changes)))
    return next((each for each in proposal.all_options if each.id == plan.option.id), None)


def _owned(case: Case, changes: tuple[Change, ...]) -> tuple[Change, ...] | None:
    """The changes with the part of the combination that doses the muscle; None where two parts do."""
    parts = [option for option in propose(case).all_options if option.id in case.combine]
    owned = []
    for change in changes:
        owners = [
            part.id
            for part in parts
            for dose in part.doses
            if (dose.eye, dose.muscle) == (change.eye, change.muscle) and dose.mm is not None
        ]
        if len(owners) != 1:
            return None
        owned.append(replace(change, option=owners[0]))
    return tuple(owned)


def _situation(case: Case) -> Situation | None:
    try:
        table = tables.chosen(case.table, case.clinic_table)
        measurements = measure(case.examination)
        answered = target(measurements, case.aim)
    except Refused:
        return None
    return Situation(
        case=case, table=table, measurements=measurements, target=answered, findings=find(measurements, answered)
    )


def _said(code: str, text: str, provenance: Provenance) -> Statement:
    return Statement(code=code, text=text, provenance=provenance, facts={})
