"""What a device knows of one operation of a list."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.records.patient import Patient
from planner.records.plan import Plan, Signature
from planner.records.set_up import SetUp
from planner.setup.health import Health, health


class Standing(StrEnum):
    """Whether the plan still stands."""

    CURRENT = "current"
    REPLACED = "replaced"
    TAKEN_BACK = "taken back"


@dataclass(frozen=True, kw_only=True)
class Known:
    """The records, with the digests of what was signed; ``signature`` and ``set_up`` null where there are none."""

    patient: Patient
    plan: Plan
    signature: Signature | None
    set_up: SetUp | None
    standing: Standing
    patient_digest: str
    plan_digest: str
    patient_now: Patient | None = None
    other_entries: tuple[Patient, ...] = ()

    @property
    def health(self) -> Health:
        """What all records of the person say that the list depends on."""
        return health(self.patient, self.patient_now, self.other_entries)
