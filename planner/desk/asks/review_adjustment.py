"""An adjustment, held against its operation."""

from __future__ import annotations

from dataclasses import dataclass

from planner import operation
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.records.operation import Adjustment, OperationRecord


@dataclass(frozen=True, kw_only=True)
class Reviewing:
    """An adjustment and the operation whose sutures it moves."""

    operation: OperationRecord
    adjustment: Adjustment


def ask(fields: Fields) -> object:
    """An ``AdjustmentReview``."""
    asked = read(Reviewing, fields)
    return write(operation.review_adjustment(asked.operation, asked.adjustment))
