"""A forced duction that meets a restriction: the muscle on the other side is tight, and is released before all else."""

from __future__ import annotations

from types import MappingProxyType

from planner.anatomy import Eye, Muscle
from planner.principles.diagnosed import TEACHING
from planner.records.examination import Examination
from planner.records.motility import Pull
from planner.values.option import Answers
from planner.values.principle import Principle
from planner.values.statement import Level

ANTAGONIST = MappingProxyType(
    {
        Muscle.MR: Muscle.LR,
        Muscle.LR: Muscle.MR,
        Muscle.SR: Muscle.IR,
        Muscle.IR: Muscle.SR,
        Muscle.SO: Muscle.IO,
        Muscle.IO: Muscle.SO,
    }
)


def tight_muscles(examination: Examination) -> tuple[tuple[Eye, Muscle], ...]:
    """The muscles that hold an eye back, right eye first."""
    return tuple(
        (each.eye, ANTAGONIST[each.muscle])
        for eye in Eye
        for each in examination.forced_ductions
        if each.eye is eye and each.result is Pull.RESTRICTED
    )


def principles(examination: Examination) -> tuple[Principle, ...]:
    """One for each tight muscle; a caution, for an option that releases the muscle may stand."""
    return tuple(_principle(eye, muscle) for eye, muscle in tight_muscles(examination))


def _principle(eye: Eye, muscle: Muscle) -> Principle:
    horizontal = muscle in (Muscle.MR, Muscle.LR)
    return Principle(
        code=f"principle-release-{eye}-{muscle.lower()}",
        text=(
            f"The {eye} {muscle.words} is tight by forced duction: release it first; do not strengthen its antagonist "
            "against it. Tables are not made for tight muscles."
        ),
        provenance=TEACHING,
        facts={"eye": eye.value, "muscle": muscle.value},
        topic="restriction",
        eye=eye,
        level=Level.CAUTION,
        concerns=(Answers.HORIZONTAL if horizontal else Answers.VERTICAL,),
        figures=(),
    )
