"""What the engine says of an operation record."""

from __future__ import annotations

from dataclasses import dataclass

from planner.anatomy import Eye, Muscle
from planner.errors import Fault
from planner.records.examination import PreviousOperation
from planner.records.operation import OperationRecord, Window
from planner.values.option import Expected
from planner.values.prediction import Outcome
from planner.values.statement import Notice, Statement


@dataclass(frozen=True, kw_only=True)
class Pointer:
    """What is thought of first in a complication; the local protocol goes before."""

    complication: str
    statements: tuple[Statement, ...]


@dataclass(frozen=True, kw_only=True)
class OperationDraft:
    """A record filled in from its plan; ``for_sclera`` are the needles that may go into sclera."""

    operation: OperationRecord
    pointers: tuple[Pointer, ...]
    for_sclera: tuple[str, ...]
    disclaimer: str


@dataclass(frozen=True, kw_only=True)
class Difference:
    """One muscle against the plan; ``code`` says how it differs, ``as_planned`` where it does not."""

    code: str
    eye: Eye
    muscle: Muscle
    text: str
    needs_reason: bool


@dataclass(frozen=True, kw_only=True)
class Effect:
    """The engine's view of what was done against what was planned, horizontally (eso +).

    ``planned_residual_pd`` is what the signed plan expected. ``done_residual_pd`` is null where the effect of what was
    done cannot be told from the table; ``statements`` then say why. ``planned`` and ``done`` are the outcomes at the
    range that the plan aimed at. ``expected`` is what is expected of other deviations, empty where not worked out.
    """

    planned_residual_pd: float | None
    done_residual_pd: float | None
    planned: Outcome | None
    done: Outcome | None
    expected: tuple[Expected, ...]
    statements: tuple[Statement, ...]


@dataclass(frozen=True, kw_only=True)
class Review:
    """A record held against its plan. ``hindrances`` keep it from being saved."""

    differences: tuple[Difference, ...]
    notices: tuple[Notice, ...]
    effect: Effect
    window: Window | None
    window_statements: tuple[Statement, ...]
    hindrances: tuple[Fault, ...]
    disclaimer: str


@dataclass(frozen=True, kw_only=True)
class EarlierMuscle:
    """A muscle as an operation record left it, adjustment included.

    ``previous`` is what an examination says of it; ``limbus_mm`` where it was attached last, if that was measured.
    """

    previous: PreviousOperation
    operated_on: str
    limbus_mm: float | None
    adjusted: bool
    text: str


@dataclass(frozen=True, kw_only=True)
class AdjustmentReview:
    """An adjustment held against its operation."""

    notices: tuple[Notice, ...]
    hindrances: tuple[Fault, ...]
    positions: tuple[EarlierMuscle, ...]


@dataclass(frozen=True, kw_only=True)
class NoteLine:
    """A muscle on the operation note: sides in words, planned and done side by side."""

    eye_words: str
    muscle_words: str
    planned_words: str
    done_words: str
    differs: bool
    reason: str
    found_words: str
    material_words: str
    adjusted_words: str


@dataclass(frozen=True, kw_only=True)
class NoteComplication:
    """A complication on the operation note."""

    words: str
    note: str
    answer: str


@dataclass(frozen=True, kw_only=True)
class OperationNote:
    """The operation note as a value; :mod:`planner.operation.note.pdf` draws it."""

    full_name: str
    born_on: str
    hospital_number: str
    sex: str
    allergies: str
    operated_on: str
    surgeon_name: str
    anaesthesia: str
    times_words: str
    title: str
    lines: tuple[NoteLine, ...]
    complications: tuple[NoteComplication, ...]
    notices: tuple[Notice, ...]
    effect_words: tuple[str, ...]
    window_words: str
    adjustment_words: tuple[str, ...]
    note: str
    plan_words: str
    check_word: str
    disclaimer: str
