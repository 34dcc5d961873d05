"""How one operation is set up: the day, what is wished, and where the surgeon departs from the rules."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

from planner.limits import IsoDate, IsoMoment, Length, Prose, Unique
from planner.records.plan import Digest, RecordId
from planner.records.practice import ChoiceId, Item


class Cooperation(StrEnum):
    """Whether the patient can lie still and follow words while awake."""

    YES = "yes"
    NO = "no"
    UNKNOWN = "unknown"


@dataclass(frozen=True, kw_only=True)
class Wishes:
    """What is wished or known beside plan and patient.

    ``block_at``: when a local block was given, or is to be. ``sedation_team``: sedation and people used to operating
    on patients who are awake are at hand.
    """

    adjustable: bool = False
    cooperation: Cooperation = Cooperation.UNKNOWN
    avoid_general: bool = False
    sedation_team: bool = False
    lost_muscle: bool = False
    block_at: Annotated[str, IsoMoment()] | None = None


NOTHING_WISHED = Wishes()


@dataclass(frozen=True, kw_only=True)
class Override:
    """Another choice than the rules', with the surgeon's reason."""

    item: Item
    choice: ChoiceId
    reason: Annotated[str, Prose(10, 400)]


@dataclass(frozen=True, kw_only=True)
class SetUp:
    """Body of a ``set_up`` record, schema 1: it speaks of one plan.

    ``practice_id`` is the clinic's ``practice`` that the choices were made with; null where there was none.
    """

    schema: int = 1
    plan_id: RecordId
    plan_digest: Digest
    on: Annotated[str, IsoDate(2000)]
    wishes: Wishes = NOTHING_WISHED
    overrides: Annotated[tuple[Override, ...], Length(0, 6), Unique(("item",))] = ()
    practice_id: RecordId | None = None
