"""Over- and underaction of the obliques, as versions showed it, and whether it goes with the pattern."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Muscle
from planner.findings.pattern import Pattern, Shape
from planner.precision.strength import TOLERANCE_PD
from planner.provenance import Mark, Provenance
from planner.records.examination import Examination
from planner.records.motility import Version
from planner.values.statement import Finding, Strength

GRADING = Provenance(
    mark=Mark.COMMON_PRACTICE, source="versions graded in steps to 4; one step is within what two examiners differ by"
)
CLEAR_FROM_STEPS = 2
OPENS_ABOVE = frozenset({Shape.V, Shape.Y})
OPENS_BELOW = frozenset({Shape.A, Shape.LAMBDA})
AGAIN = "Look at versions again, with the fixing eye in abduction, and measure the vertical deviation there."


def find(examination: Examination, pattern: Pattern) -> Iterator[Finding]:
    """A sentence for each oblique that over- or underacts."""
    for version in examination.versions:
        if version.muscle.is_rectus or version.grade == 0:
            continue
        strength = Strength.CLEAR if abs(version.grade) >= CLEAR_FROM_STEPS else Strength.BORDERLINE
        over = version.grade > 0
        yield Finding(
            code="oblique_overaction" if over else "oblique_underaction",
            text=(
                f"The {version.eye} {version.muscle.words} {'overacts' if over else 'underacts'}, "
                f"{abs(version.grade)} of 4{_with_pattern(version, pattern)}."
            ),
            provenance=GRADING,
            facts={"eye": version.eye.value, "muscle": version.muscle.value, "grade": float(version.grade)},
            strength=strength,
            settle="" if strength is Strength.CLEAR else AGAIN,
        )


def explains(version: Version, shape: Shape) -> bool:
    """Whether an oblique's action makes this pattern: too much of the inferior, or too little of the superior, a V."""
    makes_v = (version.muscle is Muscle.IO) == (version.grade > 0)
    return shape in (OPENS_ABOVE if makes_v else OPENS_BELOW)


def _with_pattern(version: Version, pattern: Pattern) -> str:
    if not pattern.shape.is_pattern or pattern.size_pd <= TOLERANCE_PD:
        return ""
    goes = "goes" if explains(version, pattern.shape) else "does not go"
    return f"; it {goes} with the {pattern.shape} pattern"
