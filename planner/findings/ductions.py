"""Limited movement of one eye, and whether it suggests a weak muscle or one that holds back.

``muscle`` names the field: a limited abduction is in the field of the lateral rectus. Moved by hand, an eye that goes
there freely suggests a weak muscle; one that does not, a tight antagonist or an adhesion.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum

from planner.anatomy import Eye, Muscle
from planner.provenance import Mark, Provenance
from planner.records.examination import Examination
from planner.records.motility import Pull
from planner.values.statement import Finding, Strength

FORCED = Provenance(
    mark=Mark.COMMON_PRACTICE, source="forced duction: free suggests palsy, restricted suggests restriction"
)
RELAXANT = Provenance(
    mark=Mark.PUBLISHED,
    source="France et al., Ophthalmology 1980;87:1282-7: forced ductions mislead up to 20 min after suxamethonium",
)
ANTAGONIST = {
    Muscle.MR: Muscle.LR,
    Muscle.LR: Muscle.MR,
    Muscle.SR: Muscle.IR,
    Muscle.IR: Muscle.SR,
    Muscle.SO: Muscle.IO,
    Muscle.IO: Muscle.SO,
}
FORCED_NEXT = "Move the eye by hand there (forced duction); under anaesthesia not within 20 minutes of suxamethonium."
DUCTION_NEXT = "Test the movement of this eye with the other covered."


class Cause(StrEnum):
    """What a limitation suggests."""

    PALSY = "palsy"
    RESTRICTION = "restriction"
    UNTOLD = "cannot be told"


@dataclass(frozen=True, kw_only=True)
class Limited:
    """An eye that falls short in the field of ``muscle``, by ``grade`` steps (negative), or is held back by hand."""

    eye: Eye
    muscle: Muscle
    grade: int
    cause: Cause


@dataclass(frozen=True, kw_only=True)
class Ductions:
    """All limitations as values, and in words."""

    limited: tuple[Limited, ...]
    statements: tuple[Finding, ...]


def find(examination: Examination) -> Ductions:
    """A sentence for each limited duction and each restriction felt; and for recti that underact in versions alone."""
    felt = {(each.eye, each.muscle): each.result for each in examination.forced_ductions}
    grades = {(each.eye, each.muscle): each.grade for each in examination.ductions}
    held = {place: 0 for place, result in felt.items() if result is Pull.RESTRICTED and not grades.get(place)}
    short = {place: grade for place, grade in grades.items() if grade < 0} | held
    limited = tuple(
        Limited(eye=eye, muscle=muscle, grade=grade, cause=_cause(felt.get((eye, muscle))))
        for (eye, muscle), grade in short.items()
    )
    return Ductions(
        limited=limited,
        statements=(*(_finding(each) for each in limited), *_versions_alone(examination, set(grades) | set(felt))),
    )


def _cause(result: Pull | None) -> Cause:
    if result is None:
        return Cause.UNTOLD
    return Cause.PALSY if result is Pull.FREE else Cause.RESTRICTION


def _finding(limited: Limited) -> Finding:
    where = f"The {limited.eye} eye"
    field = f"in the field of the {limited.muscle.words}"
    short = f"falls short {field} ({limited.grade} of 4)" if limited.grade else f"moves fully {field}"
    match limited.cause:
        case Cause.PALSY:
            because = f", and moved by hand it goes there freely: this suggests a weak {limited.muscle.words}"
        case Cause.RESTRICTION:
            tight = ANTAGONIST[limited.muscle].words
            because = f", and moved by hand it is held back: this suggests restriction, a tight {tight} or an adhesion"
        case Cause.UNTOLD:
            because = "; palsy or restriction cannot be told without moving it by hand"
    settled = limited.cause is not Cause.UNTOLD
    return Finding(
        code="limited_duction",
        text=f"{where} {short}{because}.",
        provenance=FORCED if settled else RELAXANT,
        facts={
            "eye": limited.eye.value,
            "muscle": limited.muscle.value,
            "grade": float(limited.grade),
            "suggests": limited.cause.value,
        },
        strength=_strength(limited),
        settle="" if settled else FORCED_NEXT,
    )


def _strength(limited: Limited) -> Strength:
    """One step is within what two examiners differ by, and so is a restriction felt where the eye moves fully."""
    if limited.cause is Cause.UNTOLD:
        return Strength.CANNOT_TELL
    return Strength.CLEAR if limited.grade <= CLEAR_FROM_STEPS else Strength.BORDERLINE


CLEAR_FROM_STEPS = -2


def _versions_alone(examination: Examination, tested: set[tuple[Eye, Muscle]]) -> Iterator[Finding]:
    for version in examination.versions:
        if version.muscle.is_rectus and version.grade < 0 and (version.eye, version.muscle) not in tested:
            yield Finding(
                code="limited_version",
                text=(
                    f"The {version.eye} {version.muscle.words} underacts in versions ({version.grade} of 4); "
                    "whether the eye can move there by itself was not tested."
                ),
                provenance=FORCED,
                facts={
                    "eye": version.eye.value,
                    "muscle": version.muscle.value,
                    "grade": float(version.grade),
                },
                strength=Strength.CANNOT_TELL,
                settle=DUCTION_NEXT,
            )
