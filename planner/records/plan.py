"""The plan that a surgeon chose, and the signature that freezes it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.anatomy import Eye, Muscle
from planner.limits import IsoMoment, Length, Pattern, Prose, Unique
from planner.records.case import Case
from planner.values.option import OffsetDirection, Operation, Option
from planner.values.table_stamp import TableStamp

RecordId = Annotated[str, Pattern(r"[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}", "a UUID in lower case")]
Digest = Annotated[str, Pattern(r"[0-9a-f]{64}", "a SHA-256 digest in lower-case hexadecimal")]


@dataclass(frozen=True, kw_only=True)
class Plan:
    """Body of a ``plan`` record, schema 1.

    It binds the exact patient and examination records by id and digest, so that its own digest, and the check word made
    of that, changes when any of them does. ``option`` is the engine's answer to ``case``, kept whole.
    """

    schema: int = 1
    patient_id: RecordId
    patient_digest: Digest
    examination_id: RecordId
    examination_digest: Digest
    engine_version: Annotated[str, Length(1, 20)]
    table: TableStamp
    case: Case
    option: Option
    note: Annotated[str, Prose(0, 2000)] = ""


@dataclass(frozen=True, kw_only=True)
class DrawnMuscle:
    """A muscle that the surgeon touched when drawing the plan again; ``offset`` is where its tendon is moved to."""

    eye: Eye
    muscle: Muscle
    operation: Operation
    offset: OffsetDirection | None = None


@dataclass(frozen=True, kw_only=True)
class Signature:
    """Body of a ``signature`` record, schema 1. ``acknowledged`` lists the codes of the plan's cautions."""

    schema: int = 1
    plan_id: RecordId
    plan_digest: Digest
    check_word: Annotated[str, Pattern(r"[A-Z]{4} [A-Z]{4}", "two words of four capital letters")]
    drawn: Annotated[tuple[DrawnMuscle, ...], Length(1, 12), Unique(("eye", "muscle"))]
    acknowledged: Annotated[tuple[str, ...], Length(0, 40)] = ()
    signer_name: Annotated[str, Length(1, 120)]
    signed_at: Annotated[str, IsoMoment()]
