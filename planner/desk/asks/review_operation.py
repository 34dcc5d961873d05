"""What was done, held against what was planned."""

from __future__ import annotations

from dataclasses import dataclass

from planner import operation
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.records.operation import OperationRecord
from planner.records.plan import Plan, Signature


@dataclass(frozen=True, kw_only=True)
class Reviewing:
    """An operation record and the signed plan that it was done by."""

    plan: Plan
    signature: Signature
    operation: OperationRecord


def ask(fields: Fields) -> object:
    """A ``Review``."""
    asked = read(Reviewing, fields)
    return write(operation.review(asked.plan, asked.signature, asked.operation))
