"""An operation record, filled in from its signed plan."""

from __future__ import annotations

import dataclasses

from planner import operation
from planner.canonical import digest
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.records.operation import OperationRecord


def ask(fields: Fields) -> object:
    """An ``OperationDraft``; its record binds plan and signature by the digests of the JSON as it came."""
    begun = read(operation.Begun, fields)
    made = operation.draft(begun, plan_digest=digest(fields["plan"]), signature_digest=digest(fields["signature"]))
    written = {member.name: write(getattr(made, member.name)) for member in dataclasses.fields(made)}
    return written | {"operation": _of_ones_own(made.operation)}


def _of_ones_own(record: OperationRecord) -> object:
    """Who wrote it is said where that was somebody else; a record of one's own operation keeps its first form."""
    names = (member.name for member in dataclasses.fields(record) if member.name != "recorded_by")
    return {name: write(getattr(record, name)) for name in names}
