"""What a check knows."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.limits import Length, Unique
from planner.records.check_item import Phase
from planner.records.patient import Patient
from planner.records.plan import Digest, Plan, RecordId, Signature
from planner.records.theatre_check import CardState, Entry, LocalAsked, TeamMember

BEFORE = {Phase.TIME_OUT: Phase.SIGN_IN, Phase.SIGN_OUT: Phase.TIME_OUT}
"""The phase that must have been passed before another."""


@dataclass(frozen=True, kw_only=True)
class AlsoSaid:
    """A record of the same person that the card was not signed with: a newer one, or one of another entry."""

    record_id: RecordId
    patient: Patient


@dataclass(frozen=True, kw_only=True)
class Round:
    """The card's pieces, the phase and its people, the clinic's own items, and what was entered so far, in order.

    ``plan_digest`` is the digest of the plan record's body as it was stored. ``also`` is what else the device knows
    of the person.
    """

    patient: Patient
    plan: Plan
    plan_digest: Digest
    signature: Signature
    also: Annotated[tuple[AlsoSaid, ...], Length(0, 20), Unique(("record_id",))] = ()
    card: CardState
    phase: Phase
    first: TeamMember | None = None
    second: TeamMember | None = None
    local: Annotated[tuple[LocalAsked, ...], Length(0, 20), Unique(("record_id",))] = ()
    entries: Annotated[tuple[Entry, ...], Length(0, 60), Unique(("step",))] = ()
