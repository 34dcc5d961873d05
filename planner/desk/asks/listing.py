"""What a day's list is made of, as it is asked for."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Any

from planner import lists, setup
from planner.canonical import digest
from planner.codec import read
from planner.desk.fields import Fields
from planner.errors import Fault, Refused
from planner.limits import Length
from planner.records.operating_list import OperatingList
from planner.records.patient import Patient
from planner.records.plan import Plan, Signature
from planner.records.practice import Practice
from planner.records.set_up import SetUp
from planner.values.day_list import DayList


@dataclass(frozen=True, kw_only=True)
class Held:
    """The bodies of the records that a device holds of one entry, and whether its plan still stands.

    ``patient_now`` and ``other_entries`` are held as for a card.
    """

    patient: Patient
    plan: Plan
    signature: Signature | None = None
    set_up: SetUp | None = None
    standing: lists.Standing = lists.Standing.CURRENT
    patient_now: Patient | None = None
    other_entries: Annotated[tuple[Patient, ...], Length(0, 12)] = ()


@dataclass(frozen=True, kw_only=True)
class Listing:
    """A list and, for each of its entries, what is held of it: null where that is nothing."""

    list: OperatingList
    held: Annotated[tuple[Held | None, ...], Length(0, 40)]
    practice: Practice | None = None


def list_of(fields: Fields) -> DayList:
    """The list; refused with ``held_differs`` where there is not one for each entry."""
    asked = read(Listing, fields)
    if asked.practice:
        setup.check_practice(asked.practice)
    if len(asked.held) != len(asked.list.entries):
        text = "There is one for each entry of the list, null where nothing is held."
        raise Refused(
            Fault(
                code="held_differs",
                text=text,
                field="held",
                value=str(len(asked.held)),
                allowed=str(len(asked.list.entries)),
            )
        )
    known = [_known(each, raw) if each else None for each, raw in zip(asked.held, fields["held"], strict=True)]
    return lists.day_list(asked.list, known, asked.practice)


def _known(held: Held, raw: dict[str, Any]) -> lists.Known:
    return lists.Known(
        patient=held.patient,
        plan=held.plan,
        signature=held.signature,
        set_up=held.set_up,
        standing=held.standing,
        patient_now=held.patient_now,
        other_entries=held.other_entries,
        patient_digest=digest(raw["patient"]),
        plan_digest=digest(raw["plan"]),
    )
