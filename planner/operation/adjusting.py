"""An adjustment held against the operation whose sutures it moves.

Codes: ``not_adjustable``, ``adjusted_before_tied``, ``after_missing``, ``moved_past_its_start``.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime

from planner.errors import Fault
from planner.operation.positions import Done, final_mm, muscles_left
from planner.operation.window import LATEST, LATEST_HOURS, wait_provenance
from planner.operation.works import place_words
from planner.records.operation import Adjustment, OperationRecord
from planner.values.operation import AdjustmentReview
from planner.values.statement import Level, Notice


def review_adjustment(operation: OperationRecord, adjustment: Adjustment) -> AdjustmentReview:
    """What must be said of it, what keeps it from being saved, and where the muscles lie now."""
    return AdjustmentReview(
        notices=tuple(_notices(operation, adjustment)),
        hindrances=hindrances(operation, adjustment),
        positions=muscles_left(Done(operation=operation, adjustment=adjustment)),
    )


def hindrances(operation: OperationRecord, adjustment: Adjustment) -> tuple[Fault, ...]:
    """Nothing if the adjustment may be saved."""
    return (*_times(operation, adjustment), *_muscles(operation, adjustment), *_after(adjustment))


def _times(operation: OperationRecord, adjustment: Adjustment) -> Iterator[Fault]:
    if operation.tied_at is None:
        text = "No suture of this operation was tied to be adjusted."
        yield Fault(code="not_adjustable", text=text, field="operation_id")
    elif _moment(adjustment.adjusted_at) < _moment(operation.tied_at):
        yield Fault(
            code="adjusted_before_tied",
            text="The suture was adjusted before it was tied.",
            field="adjusted_at",
            value=adjustment.adjusted_at,
            allowed=f"from {operation.tied_at} on",
        )


def _muscles(operation: OperationRecord, adjustment: Adjustment) -> Iterator[Fault]:
    works = {(each.eye, each.muscle): each.done for each in operation.muscles if each.adjustable and each.done}
    for place, moved in enumerate(adjustment.moved):
        work = works.get((moved.eye, moved.muscle))
        what = place_words(moved.eye, moved.muscle)
        if work is None:
            text = f"{what}: this muscle has no adjustable suture."
            allowed = "; ".join(place_words(*key) for key in works) or "none"
            yield Fault(code="not_adjustable", text=text, field=f"moved.{place}", allowed=allowed)
        elif work.mm is not None and final_mm(work, moved) is None:
            text = f"{what}: adjusted by more than was done."
            allowed = f"at most {work.mm:g} mm that way"
            yield Fault(
                code="moved_past_its_start",
                text=text,
                field=f"moved.{place}.mm",
                value=f"{moved.mm:g}",
                allowed=allowed,
            )


def _after(adjustment: Adjustment) -> Iterator[Fault]:
    if adjustment.moved and not adjustment.after:
        text = "A suture was moved: what is the deviation now?"
        yield Fault(code="after_missing", text=text, field="after", allowed="one reading or two")


def _notices(operation: OperationRecord, adjustment: Adjustment) -> Iterator[Notice]:
    if operation.window is None:
        return
    at = _moment(adjustment.adjusted_at)
    if at < _moment(operation.window.earliest_at):
        hours = operation.block_wait_h
        text = f"Adjusted within {hours} hours of the local block: the eye may not yet have moved as it will."
        facts = {"earliest_at": operation.window.earliest_at}
        provenance = wait_provenance(operation)
        yield Notice(code="early_adjustment", text=text, provenance=provenance, facts=facts, level=Level.CAUTION)
    if at > _moment(operation.window.latest_at):
        text = f"Adjusted later than {LATEST_HOURS} hours after the tying: the muscle may already have been held."
        facts = {"latest_at": operation.window.latest_at}
        yield Notice(code="late_adjustment", text=text, provenance=LATEST, facts=facts, level=Level.CAUTION)


def _moment(text: str) -> datetime:
    return datetime.fromisoformat(text)
