"""What a set-up sheet is made of, as it is asked for."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner import setup
from planner.canonical import digest
from planner.codec import read
from planner.desk.fields import Fields
from planner.limits import IsoDate, Length, Unique
from planner.records.patient import Patient
from planner.records.plan import Plan, Signature
from planner.records.practice import Practice
from planner.records.set_up import NOTHING_WISHED, Override, Wishes
from planner.values.set_up import SetUpSheet


@dataclass(frozen=True, kw_only=True)
class SettingUp:
    """The bodies of the records, the day, and what is wished; ``signature`` null while the plan is not signed.

    ``patient_now`` and ``other_entries`` are asked with as for a card.
    """

    patient: Patient
    plan: Plan
    on: Annotated[str, IsoDate(2000)]
    signature: Signature | None = None
    wishes: Wishes = NOTHING_WISHED
    overrides: Annotated[tuple[Override, ...], Length(0, 6), Unique(("item",))] = ()
    practice: Practice | None = None
    patient_now: Patient | None = None
    other_entries: Annotated[tuple[Patient, ...], Length(0, 12)] = ()


def sheet_of(fields: Fields) -> SetUpSheet:
    """The sheet; refused if the records do not belong together, or where an override runs into a stop."""
    asked = read(SettingUp, fields)
    if asked.practice:
        setup.check_practice(asked.practice)
    return setup.set_up(
        asked.patient,
        asked.plan,
        patient_digest=digest(fields["patient"]),
        plan_digest=digest(fields["plan"]),
        signature=asked.signature,
        on=asked.on,
        wishes=asked.wishes,
        overrides=asked.overrides,
        practice=asked.practice,
        patient_now=asked.patient_now,
        other_entries=asked.other_entries,
    )
