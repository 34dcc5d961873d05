"""What keeps a follow-up from being saved.

Codes: ``seen_before_operation``, ``other_day``, ``visit_ends_first``, ``visit_lies_behind``.
"""

from __future__ import annotations

from collections.abc import Iterator

from planner.errors import Fault
from planner.followup.schedule import days_between
from planner.records.examination import Examination
from planner.records.follow_up import FollowUp
from planner.records.operation import OperationRecord
from planner.setup.visits import misplaced


def hindrances(follow_up: FollowUp, operation: OperationRecord, examination: Examination | None) -> tuple[Fault, ...]:
    """Nothing if the follow-up may be saved; ``examination`` is the one that it names."""
    return tuple(_hindrances(follow_up, operation, examination))


def _hindrances(follow_up: FollowUp, operation: OperationRecord, examination: Examination | None) -> Iterator[Fault]:
    days = days_between(operation.operated_on, follow_up.seen_on)
    if days < 0:
        yield Fault(
            code="seen_before_operation",
            text="The visit lies before the operation.",
            field="seen_on",
            value=follow_up.seen_on,
            allowed=f"from {operation.operated_on} on",
        )
    if examination is not None and examination.examined_on != follow_up.seen_on:
        yield Fault(
            code="other_day",
            text="The examination is of another day than the visit.",
            field="seen_on",
            value=follow_up.seen_on,
            allowed=examination.examined_on,
        )
    yield from misplaced(follow_up.ahead or (), "ahead")
    for place, visit in enumerate(follow_up.ahead or ()):
        if visit.last_day <= days:
            yield Fault(
                code="visit_lies_behind",
                text=f"{visit.name}: a visit that is planned anew lies after this one.",
                field=f"ahead.{place}.last_day",
                value=str(visit.last_day),
                allowed=f"more than {days}",
            )
