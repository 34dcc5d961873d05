"""What keeps an operation record from being saved, as faults with their field.

Codes: ``other_signature``, ``other_plan``, ``planned_differs``, ``figure_missing``, ``reason_missing``,
``cutting_needle_in_sclera``, ``tied_at_missing``, ``nothing_adjustable``, ``block_far_from_tying``,
``window_differs``, ``ended_before_start``, ``note_missing``.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from planner.errors import Fault
from planner.operation.differences import difference
from planner.operation.notices import notices
from planner.operation.window import window
from planner.operation.works import place_words, planned_work, where
from planner.records.materials import Needle
from planner.records.operation import Complication, OperatedMuscle, OperationRecord
from planner.records.plan import Plan, Signature
from planner.values.option import Operation
from planner.values.statement import Level

IN_SCLERA = (Operation.RECESS, Operation.RESECT, Operation.ANTERIORISE, Operation.TRANSPOSE, Operation.HARADA_ITO)
"""Operations that put a needle into sclera; a muscle that is only weakened or tucked is not sewn to the globe."""

WITH_A_FIGURE = (Operation.RECESS, Operation.RESECT)
SHORTEST_REASON = 3
BLOCK_HOURS = 12
"""A block and the tying of one operation lie no further apart than this: more is a slip of the clock."""


def hindrances(plan: Plan, signature: Signature, record: OperationRecord) -> tuple[Fault, ...]:
    """Nothing if the record may be saved; the digests are compared by who holds the stored records."""
    return (
        *_binding(signature, record),
        *_planned(plan, record),
        *(fault for place, muscle in enumerate(record.muscles) for fault in _of_muscle(place, muscle)),
        *_reasons(plan, signature, record),
        *_adjustable(record),
        *_times(record),
        *_complications(record),
    )


def _binding(signature: Signature, record: OperationRecord) -> Iterator[Fault]:
    if signature.plan_id != record.plan_id:
        yield Fault(code="other_signature", text="The signature is of another plan.", field="plan_id")
    if signature.plan_digest != record.plan_digest:
        yield Fault(code="other_plan", text="Another content of the plan was signed.", field="plan_digest")


def _planned(plan: Plan, record: OperationRecord) -> Iterator[Fault]:
    signed = {(dose.eye, dose.muscle): planned_work(dose) for dose in plan.option.doses}
    for place, muscle in enumerate(record.muscles):
        if muscle.planned != signed.get((muscle.eye, muscle.muscle)):
            text = f"{where(muscle)}: this is not what the signed plan says of it."
            yield Fault(code="planned_differs", text=text, field=f"muscles.{place}.planned")
    recorded = {(muscle.eye, muscle.muscle) for muscle in record.muscles}
    for eye, missing in sorted(signed.keys() - recorded):
        text = f"{place_words(eye, missing)}: planned, and the record says nothing of it."
        yield Fault(code="planned_differs", text=text, field="muscles", allowed="every muscle of the plan")


def _of_muscle(place: int, muscle: OperatedMuscle) -> Iterator[Fault]:
    done = muscle.done
    if done is None:
        return
    if done.operation in WITH_A_FIGURE and done.mm is None:
        text = f"{where(muscle)}: how many millimetres were done?"
        yield Fault(code="figure_missing", text=text, field=f"muscles.{place}.done.mm", allowed="0.5 to 20 mm")
    if muscle.needle and not muscle.needle.is_for_sclera and done.operation in IN_SCLERA:
        yield Fault(
            code="cutting_needle_in_sclera",
            text=(
                f"{where(muscle)}: a {muscle.needle} needle is not for sclera. If one passed through it, leave the "
                "needle out here and record it as a complication."
            ),
            field=f"muscles.{place}.needle",
            value=muscle.needle.value,
            allowed=", ".join(needle.value for needle in Needle if needle.is_for_sclera),
        )


def _reasons(plan: Plan, signature: Signature, record: OperationRecord) -> Iterator[Fault]:
    stopped = {
        (notice.facts.get("eye"), notice.facts.get("muscle"))
        for notice in notices(plan, signature, record)
        if notice.level is Level.STOP
    }
    for place, muscle in enumerate(record.muscles):
        found = difference(muscle)
        needed = found.needs_reason or (muscle.eye.value, muscle.muscle.value) in stopped
        if needed and len(muscle.reason) < SHORTEST_REASON:
            yield Fault(
                code="reason_missing",
                text=f"{found.text} Say why.",
                field=f"muscles.{place}.reason",
                allowed="3 to 400 characters",
            )


def _adjustable(record: OperationRecord) -> Iterator[Fault]:
    adjustable = [muscle for muscle in record.muscles if muscle.adjustable and muscle.done]
    if adjustable and record.tied_at is None:
        text = "When was the adjustable suture tied? The time to adjust it counts from there."
        yield Fault(code="tied_at_missing", text=text, field="tied_at")
    if record.tied_at is not None and not adjustable:
        text = "No suture is recorded as adjustable, so none was tied for it."
        yield Fault(code="nothing_adjustable", text=text, field="tied_at", value=record.tied_at)
    if record.tied_at and record.block_at and _apart(record.tied_at, record.block_at) > timedelta(hours=BLOCK_HOURS):
        text = "The local block and the tying of the suture lie too far apart to be of one operation."
        allowed = f"within {BLOCK_HOURS} hours of {record.tied_at}"
        yield Fault(code="block_far_from_tying", text=text, field="block_at", value=record.block_at, allowed=allowed)
    if record.window != window(record):
        text = "The adjustable window is not what follows from the times."
        yield Fault(code="window_differs", text=text, field="window")


def _times(record: OperationRecord) -> Iterator[Fault]:
    if record.started_at and record.ended_at:
        started_at, ended_at = (datetime.fromisoformat(each) for each in (record.started_at, record.ended_at))
        if ended_at < started_at:
            text = "The operation ended before it began."
            allowed = f"from {record.started_at} on"
            yield Fault(code="ended_before_start", text=text, field="ended_at", value=record.ended_at, allowed=allowed)


def _complications(record: OperationRecord) -> Iterator[Fault]:
    for place, each in enumerate(record.complications):
        if each.complication is Complication.OTHER and not each.note:
            text = "Say which complication it was."
            yield Fault(
                code="note_missing", text=text, field=f"complications.{place}.note", allowed="1 to 400 characters"
            )


def _apart(one: str, other: str) -> timedelta:
    return abs(datetime.fromisoformat(one) - datetime.fromisoformat(other))
