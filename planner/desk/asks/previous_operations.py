"""The muscles as recorded operations left them, for an examination to take over."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner import operation
from planner.canonical import digest
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.limits import Length
from planner.records.operation import Adjustment, OperationRecord


@dataclass(frozen=True, kw_only=True)
class Recorded:
    """Operations in the order in which they were done, and what adjusted them: each names its operation's digest.

    Several of one signature, or several adjustments of one operation, are records that nobody has settled yet.
    """

    operations: Annotated[tuple[OperationRecord, ...], Length(0, 40)]
    adjustments: Annotated[tuple[Adjustment, ...], Length(0, 40)] = ()


def ask(fields: Fields) -> object:
    """A list of ``EarlierMuscle``."""
    asked = read(Recorded, fields)
    done = [
        operation.Done(operation=each, adjustment=adjustment)
        for each, as_it_came in zip(asked.operations, fields["operations"], strict=True)
        for adjustment in _of(asked, digest(as_it_came)) or (None,)
    ]
    return [write(each) for each in operation.earlier_muscles(done)]


def _of(asked: Recorded, operation_digest: str) -> tuple[Adjustment, ...]:
    return tuple(each for each in asked.adjustments if each.operation_digest == operation_digest)
