"""Where a horizontal rectus is attached before and after."""

from __future__ import annotations

from dataclasses import dataclass

from planner.anatomy import INSERTION_FROM_LIMBUS_MM, INSERTION_PROVENANCE, Eye, Muscle
from planner.figures import mm
from planner.globe import CHORD, CONVENTIONAL_AXIAL_LENGTH_MM, chord_mm
from planner.provenance import Mark, Provenance
from planner.records.examination import PastOperation
from planner.situation import Situation
from planner.values.option import Operation
from planner.values.statement import Statement

MOVED = Provenance(
    mark=Mark.COMPUTED, source="the classic insertion distance (Fuchs 1884) and the recessions that are recorded"
)
NOT_KNOWN = Provenance(
    mark=Mark.HOUSE_RULE,
    source="no distance from the limbus is made up for a muscle that was moved by an unknown amount",
)


@dataclass(frozen=True, kw_only=True)
class Place:
    """``attached_mm``: arc from the limbus to where the muscle is attached now, None where that is not known.

    ``is_moved``: it was recessed before. ``axial_length_mm`` is None where it was not measured.
    """

    attached_mm: float | None
    is_moved: bool
    axial_length_mm: float | None


@dataclass(frozen=True, kw_only=True)
class Put:
    """Where the muscle is put: null figures, and ``words``, where its present attachment is not known."""

    limbus_mm: float | None
    caliper_mm: float | None
    words: str
    steps: tuple[Statement, ...]


def place(situation: Situation, eye: Eye, muscle: Muscle) -> Place:
    """The muscle as earlier operations left it."""
    done = {each.operation for each in situation.earlier(eye, muscle)}
    spent_mm = situation.spent_mm(eye, muscle, Operation.RECESS)
    known = spent_mm is not None and done in (set(), {PastOperation.RECESS}, {PastOperation.RESECT})
    return Place(
        attached_mm=round(INSERTION_FROM_LIMBUS_MM[muscle] + spent_mm, 2) if known and spent_mm is not None else None,
        is_moved=bool(spent_mm),
        axial_length_mm=situation.axial_length_mm(eye),
    )


def put(before: Place, operation: Operation, dose_mm: float) -> Put:
    """Behind the present attachment after a recession, at it after a resection."""
    recessed = operation is Operation.RECESS
    if before.attached_mm is None:
        where = f"{mm(dose_mm)} behind its present attachment" if recessed else "at its present attachment"
        text = f"{where}: how far that is from the limbus is not known; measure in theatre."
        said = Statement(code="limbus", text=f"Put {text}", provenance=NOT_KNOWN, facts={})
        return Put(limbus_mm=None, caliper_mm=None, words=where, steps=(said,))
    limbus_mm = round(before.attached_mm + dose_mm, 2) if recessed else before.attached_mm
    steps = [_limbus(before, before.attached_mm, operation, dose_mm)]
    if not recessed:
        return Put(limbus_mm=limbus_mm, caliper_mm=None, words="", steps=tuple(steps))
    axial_length_mm = before.axial_length_mm or CONVENTIONAL_AXIAL_LENGTH_MM
    caliper_mm = chord_mm(limbus_mm, axial_length_mm)
    globe = mm(axial_length_mm) if before.axial_length_mm else f"{mm(axial_length_mm)}, assumed"
    steps.append(
        Statement(
            code="caliper",
            text=f"{mm(limbus_mm)} along the eye are {mm(caliper_mm)} by caliper on a globe of {globe}.",
            provenance=CHORD,
            facts={"arc_mm": limbus_mm, "caliper_mm": caliper_mm, "axial_length_mm": axial_length_mm},
        )
    )
    return Put(limbus_mm=limbus_mm, caliper_mm=caliper_mm, words="", steps=tuple(steps))


def _limbus(before: Place, attached_mm: float, operation: Operation, dose_mm: float) -> Statement:
    to = "where it was put before" if before.is_moved else "the insertion"
    if operation is Operation.RECESS:
        text = f"{mm(attached_mm)} from the limbus to {to} and {mm(dose_mm)} behind it."
    else:
        text = f"Reattached at {to}, {mm(attached_mm)} from the limbus."
    provenance = MOVED if before.is_moved else INSERTION_PROVENANCE
    return Statement(code="limbus", text=text, provenance=provenance, facts={"insertion_mm": attached_mm})
