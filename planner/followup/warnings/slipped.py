"""A rectus that no longer pulls where it was operated: slipped early, or its scar stretched later."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Eye, Muscle
from planner.figures import pd
from planner.followup.aftercare import Aftercare, Visited
from planner.followup.expected import expected
from planner.operation.works import place_words, tag
from planner.precision.limits import Direction
from planner.provenance import Mark, Provenance
from planner.records.examination import Examination, Range
from planner.records.operation import OperatedMuscle
from planner.thresholds import exceeds, reaches
from planner.values.option import Operation
from planner.values.statement import Level, Notice

EARLY_DAYS = 42
LIMITED = -2
FAR_PD = {Direction.HORIZONTAL: 15.0, Direction.VERTICAL: 10.0}
TAUGHT = Provenance(
    mark=Mark.FROM_MEMORY,
    source=(
        "a slipped muscle is taught to show as a large deviation away from its pull with weak movement into its field; "
        "15 Δ, 10 Δ of a vertical rectus, two steps of four and six weeks are chosen here"
    ),
)


def warnings(care: Aftercare, visited: Visited) -> Iterator[Notice]:
    """For each operated rectus that fits the pattern."""
    examination = visited.alignment.examination
    if examination is None:
        return
    for muscle in care.operation.muscles:
        if muscle.done is None or not muscle.muscle.is_rectus:
            continue
        grade = _grade(examination, muscle)
        was = _grade(care.plan.case.examination, muscle) or 0
        away_pd = _away_pd(care, visited, muscle)
        if grade is not None and grade <= LIMITED and grade < was and away_pd is not None:
            yield _notice(muscle, grade, away_pd, is_early=visited.days_after <= EARLY_DAYS)


def _notice(muscle: OperatedMuscle, grade: int, away_pd: float, *, is_early: bool) -> Notice:
    code, what = (
        ("slipped_muscle", "a slipped muscle")
        if is_early
        else ("stretched_scar", "a stretched scar or a slipped muscle")
    )
    return Notice(
        code=f"{code}-{tag(muscle)}",
        text=(
            f"{place_words(muscle.eye, muscle.muscle)}: {pd(away_pd)} away from its pull, and it moves poorly into its "
            f"field (limited by {-grade} of 4 steps) since it was operated. This is the pattern of {what}. The surgeon "
            "should hear of it today: a muscle that has slipped is the easier to find the sooner it is looked for."
        ),
        provenance=TAUGHT,
        facts={
            "eye": muscle.eye.value,
            "muscle": muscle.muscle.value,
            "away_pd": away_pd,
            "grade": float(grade),
            "from_pd": FAR_PD[_direction(muscle.muscle)],
        },
        level=Level.CAUTION,
    )


def _grade(examination: Examination, muscle: OperatedMuscle) -> int | None:
    """Into the field of the muscle: the duction where it was tested, else the version."""
    for tested in (examination.ductions, examination.versions):
        for each in tested:
            if (each.eye, each.muscle) == (muscle.eye, muscle.muscle):
                return each.grade
    return None


def _away_pd(care: Aftercare, visited: Visited, muscle: OperatedMuscle) -> float | None:
    """How far the eyes stand away from the muscle's pull, where that is far and more than the plan expected of it."""
    direction, sign = _direction(muscle.muscle), _sign(muscle.eye, muscle.muscle)
    found = [
        sign * value
        for at, value in visited.alignment.values(direction)
        if reaches(sign * value, FAR_PD[direction]) and not _is_expected(care, muscle, at, value)
    ]
    return max(found, default=None)


def _is_expected(care: Aftercare, muscle: OperatedMuscle, at: Range, value_pd: float) -> bool:
    """Of a muscle that was not weakened: what may remain of the deviation that was operated for."""
    if muscle.done is not None and muscle.done.operation is Operation.RECESS:
        return False
    direction, sign = _direction(muscle.muscle), _sign(muscle.eye, muscle.muscle)
    band = expected(care.plan, direction, at)
    if band is not None:
        return not exceeds(sign * value_pd, max(sign * band.low_pd, sign * band.high_pd))
    return exceeds(sign * dict(care.before.values(direction)).get(at, 0.0), sign * value_pd)


def _direction(muscle: Muscle) -> Direction:
    return Direction.HORIZONTAL if muscle in (Muscle.MR, Muscle.LR) else Direction.VERTICAL


def _sign(eye: Eye, muscle: Muscle) -> int:
    """The sign of the deviation that the muscle leaves when it is weak: eso +, right hyper +."""
    if muscle in (Muscle.MR, Muscle.LR):
        return -1 if muscle is Muscle.MR else 1
    falls = muscle is Muscle.SR
    return -1 if (eye is Eye.RIGHT) is falls else 1
