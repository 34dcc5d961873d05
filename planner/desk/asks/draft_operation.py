"""An operation record, filled in from its signed plan."""

from __future__ import annotations

import dataclasses

from planner import operation, setup
from planner.canonical import digest
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.records.operation import OperationRecord

LATER = ("recorded_by", "block_wait_h")


def ask(fields: Fields) -> object:
    """An ``OperationDraft``; its record binds plan and signature by the digests of the JSON as it came."""
    begun = read(operation.Begun, fields)
    if begun.practice:
        setup.check_practice(begun.practice)
    made = operation.draft(begun, plan_digest=digest(fields["plan"]), signature_digest=digest(fields["signature"]))
    written = {member.name: write(getattr(made, member.name)) for member in dataclasses.fields(made)}
    return written | {"operation": _in_its_first_form(made.operation)}


def _in_its_first_form(record: OperationRecord) -> object:
    """What came to the record later is said where it is not as usual: who else wrote it, a wait of the clinic's own."""
    members = (
        each
        for each in dataclasses.fields(record)
        if each.name not in LATER or getattr(record, each.name) != each.default
    )
    return {each.name: write(getattr(record, each.name)) for each in members}
