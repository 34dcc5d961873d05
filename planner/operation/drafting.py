"""An operation record filled in from its signed plan."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.disclaimer import DISCLAIMER
from planner.limits import IsoDate, Length
from planner.operation.pointers import pointers
from planner.operation.works import planned_work
from planner.records.materials import Needle
from planner.records.operation import OperatedMuscle, OperationRecord
from planner.records.plan import Digest, Plan, RecordId, Signature
from planner.records.practice import FigureName, Practice
from planner.setup.figures import figures
from planner.values.operation import OperationDraft


@dataclass(frozen=True, kw_only=True)
class Begun:
    """Who operates by which signed plan, when, and the clinic's practice where it has one."""

    plan: Plan
    signature: Signature
    signature_id: RecordId
    operated_on: Annotated[str, IsoDate()]
    surgeon_name: Annotated[str, Length(1, 120)]
    practice: Practice | None = None


def draft(begun: Begun, *, plan_digest: Digest, signature_digest: Digest) -> OperationDraft:
    """Every muscle of the plan as if done as planned; only the surgeon can say that it was."""
    record = OperationRecord(
        signature_id=begun.signature_id,
        signature_digest=signature_digest,
        plan_id=begun.signature.plan_id,
        plan_digest=plan_digest,
        operated_on=begun.operated_on,
        surgeon_name=begun.surgeon_name,
        muscles=tuple(
            OperatedMuscle(eye=dose.eye, muscle=dose.muscle, planned=planned_work(dose), done=planned_work(dose))
            for dose in begun.plan.option.doses
        ),
        block_wait_h=figures(begun.practice)[FigureName.ADJUST_AFTER_BLOCK_H],
    )
    return OperationDraft(
        operation=record,
        pointers=pointers(),
        for_sclera=tuple(needle.value for needle in Needle if needle.is_for_sclera),
        disclaimer=DISCLAIMER,
    )
