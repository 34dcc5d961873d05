"""A visit after an operation: who came when, and which examination was measured then."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, ClassVar

from planner.anatomy import Eye
from planner.limits import IsoDate, Length, Prose, Requires, Unique, Within
from planner.records.plan import Digest, RecordId

VisitName = Annotated[str, Length(1, 40)]
DayAfter = Annotated[int, Within(1, 20000, "days after the operation")]


class InfectionSign(StrEnum):
    """What is looked for lest an infection be overlooked."""

    PAIN = "growing pain"
    SWELLING = "swollen lids"
    DISCHARGE = "discharge"
    FEVER = "fever"
    VISION = "vision has dropped"
    MOVEMENT = "moving the eye hurts"
    FORWARD = "eye stands forward"


class Reoperation(StrEnum):
    """What is thought of another operation."""

    NO = "not needed"
    OPEN = "to be considered"
    PLANNED = "planned"


@dataclass(frozen=True, kw_only=True)
class InfectionSeen:
    """A sign of infection; ``eye`` is null where it is of the whole patient, as fever is."""

    sign: InfectionSign
    eye: Eye | None = None


@dataclass(frozen=True, kw_only=True)
class PlannedVisit:
    """A visit between two days after the operation, both included."""

    name: VisitName
    first_day: DayAfter
    last_day: DayAfter


PlannedVisits = Annotated[tuple[PlannedVisit, ...], Length(0, 20), Unique(("name",))]


@dataclass(frozen=True, kw_only=True)
class FollowUp:
    """Body of a ``follow_up`` record, schema 1.

    ``visit`` is the planned visit that it was, or what an unplanned one is called. The examination is the record that
    was measured at it, bound by id and digest, null where nothing was measured. ``infection_signs`` null: nobody
    looked; empty: there were none. ``ahead`` takes the place of all visits planned after this one, null changes none;
    ``ahead_reason`` says why. ``stereo_lost_to_nil``: near stereoacuity was there before the operation and is not now.
    """

    RULES: ClassVar = (
        Requires("examination_id", "examination_digest", "the digest of the examination"),
        Requires("examination_digest", "examination_id", "the id of the examination"),
    )

    schema: int = 1
    operation_id: RecordId
    visit: VisitName
    seen_on: Annotated[str, IsoDate(2000)]
    examination_id: RecordId | None = None
    examination_digest: Digest | None = None
    stereo_octaves_lost: Annotated[float, Within(0, 12, "octaves of near stereoacuity")] | None = None
    stereo_lost_to_nil: bool = False
    infection_signs: Annotated[tuple[InfectionSeen, ...], Length(0, 14), Unique(("sign", "eye"))] | None = None
    ahead: PlannedVisits | None = None
    ahead_reason: Annotated[str, Prose(0, 400)] = ""
    reoperation: Reoperation | None = None
    note: Annotated[str, Prose(0, 2000)] = ""
