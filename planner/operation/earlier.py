"""The muscles as recorded operations left them, for an examination to take over."""

from __future__ import annotations

from collections.abc import Iterable

from planner.operation.positions import Done, muscles_left
from planner.operation.unsettled import settled_or_unknown
from planner.values.operation import EarlierMuscle


def earlier_muscles(done: Iterable[Done]) -> tuple[EarlierMuscle, ...]:
    """In the order of the operations; several records of one signature are of one operation that is not settled."""
    by_signature: dict[str, list[Done]] = {}
    for each in done:
        by_signature.setdefault(each.operation.signature_id, []).append(each)
    return tuple(
        muscle
        for records in by_signature.values()
        for muscle in (settled_or_unknown(records) if len(records) > 1 else muscles_left(records[0]))
    )
