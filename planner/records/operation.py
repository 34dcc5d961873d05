"""What was done in theatre: the operation record, and what an adjustment changed of it afterwards.

A record tells facts. It is never refused because more was done than is usual, but then it says why.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, ClassVar

from planner.anatomy import Eye, Muscle
from planner.limits import AnyOf, IsoDate, IsoMoment, Length, Prose, Unique, Within
from planner.records.examination import Range
from planner.records.materials import Gauge, Needle, Suture
from planner.records.motility import Pull
from planner.records.plan import Digest, RecordId
from planner.values.option import OffsetDirection, Operation

DoneMm = Annotated[float, Within(0.5, 20, "mm")]
FromLimbus = Annotated[float, Within(0, 30, "mm of arc from the limbus")]


class Anaesthesia(StrEnum):
    """How the patient was anaesthetised."""

    GENERAL = "general"
    GENERAL_AND_BLOCK = "general with a local block"
    BLOCK = "local block"
    TOPICAL = "topical"


class MuscleState(StrEnum):
    """How the muscle was found."""

    IN_PLACE = "in place"
    SLIPPED = "slipped"
    MISSING = "missing"


class Complication(StrEnum):
    """What went wrong."""

    PERFORATION = "scleral perforation"
    LOST_MUSCLE = "lost muscle"
    BLEEDING = "bleeding"
    BRADYCARDIA = "reflex bradycardia"
    OTHER = "other"


class Shift(StrEnum):
    """What an adjustment did to a suture: ``loosen`` lets the muscle back, ``tighten`` brings it forward."""

    LOOSEN = "loosen"
    TIGHTEN = "tighten"


@dataclass(frozen=True, kw_only=True)
class MuscleWork:
    """What is done to a muscle; ``mm`` is null where the operation has no figure."""

    operation: Operation
    mm: DoneMm | None = None
    offset: OffsetDirection | None = None


@dataclass(frozen=True, kw_only=True)
class OperatedMuscle:
    """One muscle: what the plan says of it, what was done, and what was found.

    ``planned`` is null for a muscle that was added, ``done`` for one that was left out; ``reason`` says why where the
    two differ. ``insertion_mm`` is where the muscle was attached, as measured before it was moved, ``limbus_mm`` where
    it is attached now. Forced ductions are into the field of the muscle. ``scarring``: 0 none, 3 dense.
    """

    RULES: ClassVar = (AnyOf(("planned", "done"), "what was planned, what was done, or both"),)

    eye: Eye
    muscle: Muscle
    planned: MuscleWork | None = None
    done: MuscleWork | None = None
    reason: Annotated[str, Prose(0, 400)] = ""
    insertion_mm: FromLimbus | None = None
    limbus_mm: FromLimbus | None = None
    duction_before: Pull | None = None
    duction_after: Pull | None = None
    scarring: Annotated[int, Within(0, 3, "steps, 0 none to 3 dense")] | None = None
    state: MuscleState = MuscleState.IN_PLACE
    suture: Suture | None = None
    gauge: Gauge | None = None
    needle: Needle | None = None
    adjustable: bool = False


@dataclass(frozen=True, kw_only=True)
class Complicated:
    """A complication: where, what was seen, and what was done about it."""

    complication: Complication
    eye: Eye | None = None
    muscle: Muscle | None = None
    note: Annotated[str, Prose(0, 400)] = ""
    answer: Annotated[str, Prose(0, 400)] = ""


@dataclass(frozen=True, kw_only=True)
class Window:
    """When an adjustable suture can be adjusted, as the engine works it out (:mod:`planner.operation.window`)."""

    earliest_at: Annotated[str, IsoMoment()]
    latest_at: Annotated[str, IsoMoment()]


@dataclass(frozen=True, kw_only=True)
class OperationRecord:
    """Body of an ``operation`` record, schema 1.

    It binds the signature and the signed plan by id and digest. ``tied_at`` is when the adjustable suture was tied,
    ``block_at`` when the last local block was given, ``block_wait_h`` how long the clinic waits after it; ``window``
    follows from the three and is null without ``tied_at``.
    ``recorded_by`` is who wrote it where that was not ``surgeon_name``, who operated; else it is empty.
    """

    schema: int = 1
    signature_id: RecordId
    signature_digest: Digest
    plan_id: RecordId
    plan_digest: Digest
    operated_on: Annotated[str, IsoDate()]
    surgeon_name: Annotated[str, Length(1, 120)]
    muscles: Annotated[tuple[OperatedMuscle, ...], Length(1, 12), Unique(("eye", "muscle"))]
    complications: Annotated[tuple[Complicated, ...], Length(0, 12)] = ()
    anaesthesia: Anaesthesia | None = None
    started_at: Annotated[str, IsoMoment()] | None = None
    ended_at: Annotated[str, IsoMoment()] | None = None
    tied_at: Annotated[str, IsoMoment()] | None = None
    block_at: Annotated[str, IsoMoment()] | None = None
    block_wait_h: Annotated[int, Within(3, 48, "hours")] = 6
    window: Window | None = None
    note: Annotated[str, Prose(0, 2000)] = ""
    recorded_by: Annotated[str, Length(0, 120)] = ""


@dataclass(frozen=True, kw_only=True)
class Alignment:
    """The deviation at one range when a suture is adjusted: eso +, right hyper +."""

    RULES: ClassVar = (AnyOf(("horizontal_pd", "vertical_pd"), "a horizontal or a vertical figure, or both"),)

    range: Range
    horizontal_pd: Annotated[float, Within(-150, 150, "prism dioptres, eso +, exo -")] | None = None
    vertical_pd: Annotated[float, Within(-80, 80, "prism dioptres, right hyper +, left hyper -")] | None = None


Alignments = Annotated[tuple[Alignment, ...], Length(0, 2), Unique(("range",))]


@dataclass(frozen=True, kw_only=True)
class MovedMuscle:
    """A suture that was loosened or tightened; ``limbus_mm`` is where the muscle is attached now, if measured."""

    eye: Eye
    muscle: Muscle
    way: Shift
    mm: Annotated[float, Within(0.5, 10, "mm")]
    limbus_mm: FromLimbus | None = None


@dataclass(frozen=True, kw_only=True)
class Adjustment:
    """Body of an ``adjustment`` record, schema 1: the end of the adjustable window.

    Nothing moved means that the sutures were tied as they were. It binds the operation record by id and digest.
    ``recorded_by`` is who wrote it where that was not ``surgeon_name``, who adjusted; else it is empty.
    """

    schema: int = 1
    operation_id: RecordId
    operation_digest: Digest
    adjusted_at: Annotated[str, IsoMoment()]
    surgeon_name: Annotated[str, Length(1, 120)]
    before: Annotated[tuple[Alignment, ...], Length(1, 2), Unique(("range",))]
    moved: Annotated[tuple[MovedMuscle, ...], Length(0, 12), Unique(("eye", "muscle"))] = ()
    after: Alignments = ()
    note: Annotated[str, Prose(0, 2000)] = ""
    recorded_by: Annotated[str, Length(0, 120)] = ""
