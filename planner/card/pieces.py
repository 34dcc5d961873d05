"""What a card is made of."""

from __future__ import annotations

from dataclasses import dataclass

from planner.records.patient import Patient
from planner.records.plan import Plan, Signature
from planner.values.sewing import Sewing


@dataclass(frozen=True, kw_only=True)
class Pieces:
    """A plan, the patient it was made for, and its signature.

    The digests are those of the bodies of the patient and plan records as they were stored: a body may leave out
    fields that have a default, so they cannot be made again from the values. ``patient_now`` is the present version of
    the patient's record, where it is known: what it says beyond the signed one is newer than the signature.
    ``other_entries`` are the present records of the same person under other entries, where they were entered twice.
    ``sewing`` is what the operation's set-up says of suture and needle, where it was prepared.
    """

    patient: Patient
    plan: Plan
    signature: Signature
    patient_digest: str
    plan_digest: str
    patient_now: Patient | None = None
    other_entries: tuple[Patient, ...] = ()
    sewing: Sewing | None = None
