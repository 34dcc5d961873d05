"""An operation record as its adjustment left it: what was done in the end."""

from __future__ import annotations

from dataclasses import replace

from planner.operation.positions import final_limbus_mm, final_mm
from planner.records.operation import Adjustment, MovedMuscle, OperatedMuscle, OperationRecord
from planner.thresholds import same


def finally_done(operation: OperationRecord, adjustment: Adjustment) -> OperationRecord:
    """The record with the millimetres and places after the adjustment, for reckoning alone: nobody wrote it."""
    moved = {(each.eye, each.muscle): each for each in adjustment.moved}
    muscles = tuple(_finally(each, moved.get((each.eye, each.muscle))) for each in operation.muscles)
    return replace(operation, muscles=muscles)


def _finally(muscle: OperatedMuscle, moved: MovedMuscle | None) -> OperatedMuscle:
    """A muscle brought back all the way is as if it had not been operated; past that nothing is known of it."""
    if muscle.done is None or moved is None:
        return muscle
    left_mm = final_mm(muscle.done, moved)
    is_undone = left_mm is not None and same(left_mm, 0)
    done = None if is_undone else replace(muscle.done, mm=left_mm)
    return replace(muscle, done=done, limbus_mm=final_limbus_mm(muscle, moved))
