"""The three records that a card is made of."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner import card as cards
from planner import setup
from planner.canonical import digest
from planner.codec import read
from planner.desk.fields import Fields
from planner.limits import Length
from planner.records.patient import Patient
from planner.records.plan import Plan, Signature
from planner.records.practice import Practice
from planner.records.set_up import SetUp
from planner.values.card import Card


@dataclass(frozen=True, kw_only=True)
class Bodies:
    """The bodies of the three records that a card is made of, and the present version of the patient's.

    ``other_entries``: the present records of the other entries of a person who was entered twice. ``set_up``: how this
    operation is prepared, and ``practice``: the clinic's own, where there are any.
    """

    patient: Patient
    plan: Plan
    signature: Signature
    patient_now: Patient | None = None
    other_entries: Annotated[tuple[Patient, ...], Length(0, 12)] = ()
    set_up: SetUp | None = None
    practice: Practice | None = None


def pieces_of(fields: Fields) -> cards.Pieces:
    """The pieces of a request that says nothing else."""
    return put_together(read(Bodies, fields), fields)


def put_together(bodies: Bodies, fields: Fields) -> cards.Pieces:
    """The pieces with the digests of the bodies as they came."""
    return cards.Pieces(
        patient=bodies.patient,
        plan=bodies.plan,
        signature=bodies.signature,
        patient_digest=digest(fields["patient"]),
        plan_digest=digest(fields["plan"]),
        patient_now=bodies.patient_now,
        other_entries=bodies.other_entries,
        sewing=setup.sewing(bodies.plan, bodies.patient.born_on, bodies.set_up, bodies.practice),
    )


def card_of(fields: Fields) -> Card:
    """The card; refused if the three do not belong together."""
    return cards.card(pieces_of(fields))
