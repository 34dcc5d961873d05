"""The muscles as operations and their adjustments left them, in the words of an examination's previous operations."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from planner.figures import mm
from planner.operation.works import where, work_words
from planner.records.examination import PastOperation, PreviousOperation
from planner.records.operation import (
    Adjustment,
    Complication,
    MovedMuscle,
    MuscleState,
    MuscleWork,
    OperatedMuscle,
    OperationRecord,
    Shift,
)
from planner.values.operation import EarlierMuscle
from planner.values.option import Operation

PAST = {Operation.RECESS: PastOperation.RECESS, Operation.RESECT: PastOperation.RESECT}


@dataclass(frozen=True, kw_only=True)
class Done:
    """An operation and its adjustment, if it was adjusted."""

    operation: OperationRecord
    adjustment: Adjustment | None = None


def muscles_left(done: Done) -> tuple[EarlierMuscle, ...]:
    """Every muscle that was operated, or found out of its place, as one record says it."""
    return tuple(_of_one(done))


def final_mm(work: MuscleWork, moved: MovedMuscle | None) -> float | None:
    """The millimetres after the adjustment; None without a figure, or where it was adjusted past where it began."""
    if work.mm is None:
        return None
    if moved is None:
        return work.mm
    back_mm = moved.mm if moved.way is Shift.LOOSEN else -moved.mm
    left_mm = work.mm + back_mm if work.operation is Operation.RECESS else work.mm - back_mm
    return round(left_mm, 2) if left_mm >= 0 else None


def final_limbus_mm(muscle: OperatedMuscle, moved: MovedMuscle | None) -> float | None:
    """Where the muscle was attached last: as measured, or as measured before and moved since."""
    if moved is None or muscle.limbus_mm is None:
        return moved.limbus_mm if moved else muscle.limbus_mm
    if moved.limbus_mm is not None:
        return moved.limbus_mm
    return round(muscle.limbus_mm + (moved.mm if moved.way is Shift.LOOSEN else -moved.mm), 2)


def _of_one(done: Done) -> Iterator[EarlierMuscle]:
    moved = {(each.eye, each.muscle): each for each in done.adjustment.moved} if done.adjustment else {}
    lost = {
        (each.eye, each.muscle)
        for each in done.operation.complications
        if each.complication is Complication.LOST_MUSCLE
    }
    for muscle in done.operation.muscles:
        if muscle.done is None and muscle.state is MuscleState.IN_PLACE:
            continue
        key = (muscle.eye, muscle.muscle)
        yield _earlier(done.operation, muscle, moved.get(key), is_lost=key in lost)


def _earlier(
    operation: OperationRecord, muscle: OperatedMuscle, moved: MovedMuscle | None, *, is_lost: bool
) -> EarlierMuscle:
    work = muscle.done
    known_mm = final_mm(work, moved) if work else None
    past = PAST.get(work.operation, PastOperation.OTHER) if work else PastOperation.OTHER
    if is_lost or (work is not None and work.mm is not None and known_mm is None):
        past, known_mm = PastOperation.OTHER, None
    return EarlierMuscle(
        previous=PreviousOperation(
            eye=muscle.eye, muscle=muscle.muscle, operation=past, mm=known_mm, year=int(operation.operated_on[:4])
        ),
        operated_on=operation.operated_on,
        limbus_mm=final_limbus_mm(muscle, moved),
        adjusted=moved is not None,
        text=". ".join(_sentences(muscle, moved, known_mm, is_lost=is_lost)) + ".",
    )


def _sentences(
    muscle: OperatedMuscle, moved: MovedMuscle | None, known_mm: float | None, *, is_lost: bool
) -> Iterator[str]:
    yield f"{where(muscle)}: {work_words(muscle.done) if muscle.done else 'not operated'}"
    if moved:
        now = "" if known_mm is None else f", {mm(known_mm)} in the end"
        yield f"{moved.way.capitalize()}ed by {mm(moved.mm)} when adjusted{now}"
    if muscle.state is not MuscleState.IN_PLACE:
        yield f"Found {muscle.state}"
    if is_lost:
        yield "The muscle was lost at this operation"
    limbus_mm = final_limbus_mm(muscle, moved)
    if limbus_mm is not None:
        yield f"Attached {mm(limbus_mm)} from the limbus"
