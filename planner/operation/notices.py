"""What must be said of what was done. A stop asks for an explicit reason and is shown wherever the record is shown."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime

from planner.anatomy import Eye, Muscle
from planner.figures import mm
from planner.maxima import CONVENTIONAL
from planner.operation.limits import Limit, limit
from planner.operation.works import tag, where
from planner.provenance import Mark, Provenance
from planner.records.motility import Pull
from planner.records.operation import MuscleState, MuscleWork, OperatedMuscle, OperationRecord
from planner.records.plan import Plan, Signature
from planner.rules.recti import COUNSELLED, ISCHAEMIA, ROUTINE, TEACHING
from planner.thresholds import exceeds
from planner.values.option import Operation
from planner.values.statement import Level, Notice

PLAN = Provenance(mark=Mark.HOUSE_RULE, source="what was done is held against the signed plan")
FOUND = Provenance(mark=Mark.COMMON_PRACTICE, source="what was found decides what is safe to do next")
MEASURED = Provenance(
    mark=Mark.PUBLISHED,
    source="OCT of 187 eyes (PMID 27166792): medial rectus 4.1 to 6.1 mm, lateral rectus 5.2 to 7.6 mm",
)
SUM = Provenance(mark=Mark.COMPUTED, source="the measured attachment and what was done")
OCT_MM = {Muscle.MR: (4.1, 6.1), Muscle.LR: (5.2, 7.6)}
OPPOSITE = ({Operation.RECESS, Operation.RESECT},)
MISFIT_MM = 1.0
"""House rule: a caliper in theatre is trusted to half a millimetre at either end."""


def notices(plan: Plan, signature: Signature, record: OperationRecord) -> tuple[Notice, ...]:
    """Everything there is to say, stops first."""
    found = [*_dates(signature, record), *_recti(record)]
    for muscle in record.muscles:
        found += [*_place(plan, muscle), *_work(muscle), *_amount(plan, muscle), *_findings(plan, muscle)]
    order = tuple(Level)
    return tuple(sorted(found, key=lambda notice: order.index(notice.level)))


def _notice(
    level: Level, code: str, text: str, provenance: Provenance, muscle: OperatedMuscle, **facts: float
) -> Notice:
    named = {"eye": muscle.eye.value, "muscle": muscle.muscle.value, **facts}
    return Notice(code=f"{code}-{tag(muscle)}", text=text, provenance=provenance, facts=named, level=level)


def _dates(signature: Signature, record: OperationRecord) -> Iterator[Notice]:
    """A day's difference is left to the time zones."""
    signed_on = datetime.fromisoformat(signature.signed_at).date()
    if (signed_on - date.fromisoformat(record.operated_on)).days > 1:
        yield Notice(
            code="operated_before_signed",
            text=f"The operation is dated {record.operated_on}, before the plan was signed on {signed_on.isoformat()}.",
            provenance=PLAN,
            facts={"operated_on": record.operated_on, "signed_on": signed_on.isoformat()},
            level=Level.CAUTION,
        )


def _recti(record: OperationRecord) -> Iterator[Notice]:
    for eye in Eye:
        count = sum(each.eye is eye and each.done is not None and each.muscle.is_rectus for each in record.muscles)
        if count > ROUTINE:
            many = count > COUNSELLED
            yield Notice(
                code=f"{'four_recti' if many else 'three_recti'}-{eye}",
                text=(
                    f"{eye.capitalize()} eye: {count} recti were operated at one sitting; "
                    "watch the front of the eye for ischaemia."
                ),
                provenance=TEACHING if many else ISCHAEMIA,
                facts={"eye": eye.value, "now": float(count)},
                level=Level.STOP if many else Level.CAUTION,
            )


def _place(plan: Plan, muscle: OperatedMuscle) -> Iterator[Notice]:
    if muscle.planned is not None or muscle.done is None:
        return
    if muscle.eye not in {dose.eye for dose in plan.option.doses}:
        text = f"{where(muscle)}: the plan does not operate the {muscle.eye} eye."
        yield _notice(Level.STOP, "other_eye", text, PLAN, muscle)
    else:
        text = f"{where(muscle)}: the plan does not operate this muscle."
        yield _notice(Level.CAUTION, "muscle_not_planned", text, PLAN, muscle)


def _work(muscle: OperatedMuscle) -> Iterator[Notice]:
    planned, done = muscle.planned, muscle.done
    if planned and done and {planned.operation, done.operation} in OPPOSITE:
        text = f"{where(muscle)}: a {done.operation.noun} was done where a {planned.operation.noun} was planned."
        yield _notice(Level.STOP, "opposite_operation", text, PLAN, muscle)
    if planned and not done:
        text = f"{where(muscle)}: planned and not operated."
        yield _notice(Level.CAUTION, "left_out", text, PLAN, muscle)


def _amount(plan: Plan, muscle: OperatedMuscle) -> Iterator[Notice]:
    done = muscle.done
    most = limit(plan, muscle, done) if done else None
    if done is None or done.mm is None or most is None:
        return
    what = f"{where(muscle)}: a {done.operation.noun} of {mm(done.mm)}"
    if exceeds(done.mm + most.spent_mm, most.widest_mm):
        yield _too_much(muscle, done.mm, most, what)
    elif exceeds(done.mm, most.usual_mm):
        text = f"{what} is above the usual maximum of {mm(most.usual_mm)}."
        facts = {"mm": done.mm, "limit_mm": most.usual_mm}
        yield _notice(Level.CAUTION, "above_usual_maximum", text, CONVENTIONAL, muscle, **facts)


def _too_much(muscle: OperatedMuscle, done_mm: float, most: Limit, what: str) -> Notice:
    together = f" with {mm(most.spent_mm)} before" if most.spent_mm else ""
    text = f"{what}{together} is above the widest maximum of {mm(most.widest_mm)}."
    facts = {"mm": done_mm, "spent_mm": most.spent_mm, "limit_mm": most.widest_mm}
    return _notice(Level.STOP, "above_widest_maximum", text, CONVENTIONAL, muscle, **facts)


def _findings(plan: Plan, muscle: OperatedMuscle) -> Iterator[Notice]:
    if muscle.state is not MuscleState.IN_PLACE:
        text = f"{where(muscle)}: found {muscle.state}; plan the next step as for a {muscle.state} muscle."
        yield _notice(Level.CAUTION, f"muscle_{muscle.state}", text, FOUND, muscle)
    if muscle.duction_after is Pull.RESTRICTED:
        text = f"{where(muscle)}: the forced duction into its field was still restricted at the end."
        yield _notice(Level.CAUTION, "still_restricted", text, FOUND, muscle)
    yield from _insertion(plan, muscle)
    if muscle.done:
        yield from _attachment(muscle, muscle.done)


def _insertion(plan: Plan, muscle: OperatedMuscle) -> Iterator[Notice]:
    earlier = {(each.eye, each.muscle) for each in plan.case.examination.previous_operations}
    usual = OCT_MM.get(muscle.muscle)
    if muscle.insertion_mm is None or usual is None or (muscle.eye, muscle.muscle) in earlier:
        return
    low, high = usual
    if exceeds(low, muscle.insertion_mm) or exceeds(muscle.insertion_mm, high):
        text = (
            f"{where(muscle)}: its insertion was measured {mm(muscle.insertion_mm)} from the limbus; {low:g} to "
            f"{mm(high)} is what eyes not operated before have."
        )
        facts = {"mm": muscle.insertion_mm, "low_mm": low, "high_mm": high}
        yield _notice(Level.CAUTION, "unusual_insertion", text, MEASURED, muscle, **facts)


def _attachment(muscle: OperatedMuscle, done: MuscleWork) -> Iterator[Notice]:
    """The distance at the end against the one before and what was done between."""
    if muscle.insertion_mm is None or muscle.limbus_mm is None or done.mm is None:
        return
    if done.operation not in (Operation.RECESS, Operation.RESECT):
        return
    fits_mm = muscle.insertion_mm + (done.mm if done.operation is Operation.RECESS else 0.0)
    if exceeds(abs(muscle.limbus_mm - fits_mm), MISFIT_MM):
        text = (
            f"{where(muscle)}: attached {mm(muscle.limbus_mm)} from the limbus at the end, but "
            f"{mm(muscle.insertion_mm)} before and a {done.operation.noun} of {mm(done.mm)} give {mm(fits_mm)}."
        )
        facts = {"limbus_mm": muscle.limbus_mm, "fits_mm": round(fits_mm, 2)}
        yield _notice(Level.CAUTION, "distance_misfits", text, SUM, muscle, **facts)
