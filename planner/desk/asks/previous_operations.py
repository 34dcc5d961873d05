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
    """Operations in the order in which they were done, and what adjusted them: each names its operation's digest."""

    operations: Annotated[tuple[OperationRecord, ...], Length(0, 40)]
    adjustments: Annotated[tuple[Adjustment, ...], Length(0, 40)] = ()


def ask(fields: Fields) -> object:
    """A list of ``EarlierMuscle``."""
    asked = read(Recorded, fields)
    adjusted = {each.operation_digest: each for each in asked.adjustments}
    done = [
        operation.Done(operation=each, adjustment=adjusted.get(digest(as_it_came)))
        for each, as_it_came in zip(asked.operations, fields["operations"], strict=True)
    ]
    return [write(each) for each in operation.earlier_muscles(done)]
