"""One pause in theatre, gone through to its end or to a stop."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

from planner.anatomy import Eye, Muscle
from planner.limits import IsoDate, IsoMoment, Length, Pattern, Prose, Unique
from planner.records.check_item import CheckItem, Phase, TeamRole
from planner.records.plan import RecordId
from planner.values.option import Operation


class CardState(StrEnum):
    """What the device knew of the card when the check was closed."""

    CURRENT = "current"
    REPLACED = "replaced"
    TAKEN_BACK = "taken back"


class Marked(StrEnum):
    """Where the skin is marked."""

    RIGHT = "right"
    LEFT = "left"
    BOTH = "both"
    NONE = "none"


class Outcome(StrEnum):
    """How a check ended."""

    PASSED = "passed"
    STOPPED = "stopped"


@dataclass(frozen=True, kw_only=True)
class TeamMember:
    """Somebody in theatre, by the name that they gave themselves."""

    name: Annotated[str, Length(2, 120)]
    role: TeamRole


@dataclass(frozen=True, kw_only=True)
class Consented:
    """What a consent form says of one muscle."""

    eye: Eye
    muscle: Muscle
    operation: Operation


@dataclass(frozen=True, kw_only=True)
class GoingOn:
    """The surgeon's word that the operation goes on in spite of an answer that stops."""

    surgeon: Annotated[str, Length(2, 120)]
    reason: Annotated[str, Prose(3, 400)]


@dataclass(frozen=True, kw_only=True)
class Entry:
    """What was entered at one step, as it was entered: each step asks for one or two of the fields."""

    step: Annotated[str, Length(1, 80)]
    answer: Annotated[str, Length(1, 40)] | None = None
    words: Annotated[str, Prose(0, 400)] = ""
    hospital_number: Annotated[str, Length(1, 40)] | None = None
    born_on: Annotated[str, IsoDate()] | None = None
    check_word: Annotated[str, Length(1, 40)] | None = None
    marked: Marked | None = None
    consented: Annotated[tuple[Consented, ...], Length(1, 12), Unique(("eye", "muscle"))] | None = None
    going_on: GoingOn | None = None


@dataclass(frozen=True, kw_only=True)
class LocalAsked:
    """A question of the clinic's own as it was asked, and the record that it stands in."""

    record_id: RecordId
    item: CheckItem


@dataclass(frozen=True, kw_only=True)
class StopNoted:
    """What stopped a check, and at which step; ``step`` is empty when it was the card itself."""

    code: Annotated[str, Pattern(r"[a-z_]{1,40}", "a code")]
    step: Annotated[str, Length(0, 80)]
    text: Annotated[str, Prose(1, 2000)]


@dataclass(frozen=True, kw_only=True)
class TheatreCheck:
    """Body of a ``theatre_check`` record, schema 1.

    ``patient_id`` is the version of the patient that the plan names, ``also`` the newer records and those of other
    entries of the same person that the check was held against too. ``after`` is the passed check of the phase before.
    ``first`` leads through the check and ``second`` enters the operation again; they are null only where the card
    itself stopped the check before anybody began. The outcome follows from the rest by :mod:`planner.checks`.
    """

    schema: int = 1
    signature_id: RecordId
    plan_id: RecordId
    patient_id: RecordId
    also: Annotated[tuple[RecordId, ...], Length(0, 20)] = ()
    phase: Phase
    card: CardState
    after: RecordId | None = None
    first: TeamMember | None = None
    second: TeamMember | None = None
    local: Annotated[tuple[LocalAsked, ...], Length(0, 20), Unique(("record_id",))] = ()
    entries: Annotated[tuple[Entry, ...], Length(0, 60), Unique(("step",))] = ()
    outcome: Outcome
    stop: StopNoted | None = None
    closed_at: Annotated[str, IsoMoment()]
