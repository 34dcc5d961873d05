"""The items of a phase, the clinic's own at its end, and the steps as this patient needs them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from planner.checks.comparisons.wristband import keys_of
from planner.checks.items import ITEMS
from planner.checks.items.source import CLINIC
from planner.checks.round import Round
from planner.records.check_item import Phase
from planner.records.theatre_check import LocalAsked
from planner.values.checks import Answer, Effect, Hand, Item, Step, Way


@dataclass(frozen=True, kw_only=True)
class Place:
    """A step and the item that it belongs to, which is the ``number``-th of all phases."""

    number: int
    item: Item
    step: Step


def items(local: tuple[LocalAsked, ...]) -> tuple[Item, ...]:
    """All items in the order in which they are asked."""
    own = tuple(_own(asked) for asked in local)
    return tuple(item for phase in Phase for item in (*ITEMS, *own) if item.phase is phase)


def agenda(check: Round) -> tuple[Place, ...]:
    """The steps of the check's phase, in order."""
    return tuple(_places(check))


def _places(check: Round) -> Iterator[Place]:
    for number, item in enumerate(items(check.local), start=1):
        if item.phase is check.phase:
            for step in item.steps:
                yield Place(number=number, item=item, step=_for_patient(step, check))


def _for_patient(step: Step, check: Round) -> Step:
    if step.way in (Way.WRISTBAND, Way.WRISTBAND_NUMBER):
        return replace(step, keys=keys_of(check.patient.hospital_number, step.way))
    return step


def _own(asked: LocalAsked) -> Item:
    item = asked.item
    step = Step(
        id=f"local-{asked.record_id}",
        title=item.title,
        role=item.role,
        hand=Hand.FIRST,
        aloud=item.aloud,
        answers=(
            Answer(value="goes_on", words=item.goes_on),
            Answer(value="stops", words=item.stops, effect=Effect.STOP),
        ),
    )
    return Item(id=step.id, phase=item.phase, steps=(step,), provenance=CLINIC)
