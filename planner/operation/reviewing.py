"""An operation record held against its signed plan."""

from __future__ import annotations

from planner.disclaimer import DISCLAIMER
from planner.operation.differences import difference
from planner.operation.effect import effect
from planner.operation.hindrances import hindrances
from planner.operation.notices import notices
from planner.operation.window import statements, window
from planner.records.operation import OperationRecord
from planner.records.plan import Plan, Signature
from planner.values.operation import Review


def review(plan: Plan, signature: Signature, record: OperationRecord) -> Review:
    """Differences, what must be said, the engine's view of the effect, and what keeps the record from being saved."""
    return Review(
        differences=tuple(map(difference, record.muscles)),
        notices=notices(plan, signature, record),
        effect=effect(plan, record),
        window=window(record),
        window_statements=tuple(statements(record)),
        hindrances=hindrances(plan, signature, record),
        disclaimer=DISCLAIMER,
    )
