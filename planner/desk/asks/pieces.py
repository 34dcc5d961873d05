"""The three records that a card is made of."""

from __future__ import annotations

from dataclasses import dataclass

from planner import card as cards
from planner.canonical import digest
from planner.codec import read
from planner.desk.fields import Fields
from planner.records.patient import Patient
from planner.records.plan import Plan, Signature
from planner.values.card import Card


@dataclass(frozen=True, kw_only=True)
class Pieces:
    """The bodies of the three records that a card is made of."""

    patient: Patient
    plan: Plan
    signature: Signature


def card_of(fields: Fields) -> Card:
    """The card; refused if the three do not belong together."""
    pieces = read(Pieces, fields)
    return cards.card(
        pieces.patient,
        pieces.plan,
        pieces.signature,
        patient_digest=digest(fields["patient"]),
        plan_digest=digest(fields["plan"]),
    )
