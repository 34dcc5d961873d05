"""An operation record, filled in from its signed plan."""

from __future__ import annotations

from planner import operation
from planner.canonical import digest
from planner.codec import read, write
from planner.desk.fields import Fields


def ask(fields: Fields) -> object:
    """An ``OperationDraft``; its record binds plan and signature by the digests of the JSON as it came."""
    begun = read(operation.Begun, fields)
    return write(
        operation.draft(begun, plan_digest=digest(fields["plan"]), signature_digest=digest(fields["signature"]))
    )
