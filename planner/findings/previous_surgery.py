"""Earlier operations, a deviation turned round by one, and a muscle that may have slipped or been lost."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from planner.anatomy import Eye, Muscle
from planner.direction import Direction, direction_of
from planner.figures import mm
from planner.findings.ductions import Cause, Ductions, Limited
from planner.provenance import Mark, Provenance
from planner.records.examination import Examination, PastOperation, PreviousOperation
from planner.thresholds import same
from planner.values.proposal import Target
from planner.values.statement import Finding, Strength

HISTORY = Provenance(mark=Mark.MEASURED, source="the history in this examination")
CONSECUTIVE = Provenance(
    mark=Mark.COMMON_PRACTICE, source="a deviation opposite to the one that was operated for is called consecutive"
)
SLIPPED = Provenance(
    mark=Mark.FROM_MEMORY,
    source="as taught: weakness in the field of an operated muscle, and a deviation away from it, suggest a slip",
)
SURELY_SHORT_STEPS = -2
IMAGE = "Test ductions, saccades and forced ductions; image the muscle; explore it before operating on another."
FIND_NOTES = "Find the earlier operation notes."
PAST_WORDS = {
    PastOperation.RECESS: "recession",
    PastOperation.RESECT: "resection",
    PastOperation.OTHER: "another operation",
    PastOperation.UNKNOWN: "operation not known",
}


@dataclass(frozen=True, kw_only=True)
class PreviousSurgery:
    """``slipped`` are the muscles that may have slipped or been lost."""

    slipped: tuple[Limited, ...]
    statements: tuple[Finding, ...]


def find(examination: Examination, target: Target, ductions: Ductions) -> PreviousSurgery:
    """What was done before and what may have come of it."""
    done = examination.previous_operations
    operated = {(each.eye, each.muscle) for each in done}
    slipped = tuple(
        each for each in ductions.limited if (each.eye, each.muscle) in operated and _may_have_slipped(each, target)
    )
    return PreviousSurgery(
        slipped=slipped,
        statements=(*map(_history, done), *_consecutive(done, target), *map(_slipped, slipped)),
    )


def _history(done: PreviousOperation) -> Finding:
    parts = [PAST_WORDS[done.operation], "" if done.mm is None else mm(done.mm), f"in {done.year}" if done.year else ""]
    known = done.operation in (PastOperation.RECESS, PastOperation.RESECT) and done.mm is not None
    return Finding(
        code="previous_surgery",
        text=f"Operated before: {done.eye} {done.muscle.words}, {' '.join(part for part in parts if part)}.",
        provenance=HISTORY,
        facts={"eye": done.eye.value, "muscle": done.muscle.value, "operation": done.operation.value},
        strength=Strength.CLEAR if known else Strength.CANNOT_TELL,
        settle="" if known else FIND_NOTES,
    )


def _consecutive(done: tuple[PreviousOperation, ...], target: Target) -> Iterator[Finding]:
    """Against the direction that every earlier horizontal operation was for."""
    was_for = {direction for each in done if (direction := _was_for(each))}
    if len(was_for) != 1 or same(target.horizontal_pd, 0):
        return
    (before,) = was_for
    now = direction_of(target.horizontal_pd)
    if now is not before:
        yield Finding(
            code="consecutive_deviation",
            text=f"Earlier surgery was for {before.words}, now there is {now.words}: consecutive.",
            provenance=CONSECUTIVE,
            facts={"before": before.value, "now": now.value},
            strength=Strength.CLEAR,
            settle="",
        )


def _was_for(done: PreviousOperation) -> Direction | None:
    for direction in Direction:
        if (done.muscle, done.operation) in (
            (direction.recessed, PastOperation.RECESS),
            (direction.resected, PastOperation.RESECT),
        ):
            return direction
    return None


def _may_have_slipped(limited: Limited, target: Target) -> bool:
    """Surely short in its field, or short at all with the deviation that its weakness makes; not where held back."""
    if limited.cause is Cause.RESTRICTION or limited.grade == 0:
        return False
    return limited.grade <= SURELY_SHORT_STEPS or weakness_makes(limited.eye, limited.muscle, target)


def weakness_makes(eye: Eye, muscle: Muscle, target: Target) -> bool:
    """Whether the deviation straight ahead is what weakness of this muscle makes."""
    match muscle:
        case Muscle.MR:
            return target.horizontal_pd < 0
        case Muscle.LR:
            return target.horizontal_pd > 0
    hyper_pd = (target.vertical_pd or 0.0) * (1 if eye is Eye.RIGHT else -1)
    return hyper_pd > 0 if muscle in (Muscle.IR, Muscle.SO) else hyper_pd < 0


def _slipped(limited: Limited) -> Finding:
    free = limited.cause is Cause.PALSY
    felt = "it moves there freely by hand" if free else "it was not moved by hand"
    return Finding(
        code="slipped_muscle",
        text=(
            f"The {limited.eye} {limited.muscle.words} was operated before and the eye falls short in its field "
            f"({limited.grade} of 4); {felt}: the muscle may have slipped or been lost."
        ),
        provenance=SLIPPED,
        facts={"eye": limited.eye.value, "muscle": limited.muscle.value, "grade": float(limited.grade)},
        strength=Strength.BORDERLINE if free else Strength.CANNOT_TELL,
        settle=IMAGE,
    )
