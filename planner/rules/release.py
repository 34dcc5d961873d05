"""A muscle that is tight by forced duction: nothing on its axis is done without releasing it."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Eye, Muscle
from planner.dosing.draft import Draft
from planner.principles.diagnosed import TEACHING
from planner.principles.tight import ANTAGONIST, tight_muscles
from planner.situation import Situation
from planner.values.option import Dose, Operation
from planner.values.statement import Level, Notice

RELEASES = (Operation.RECESS, Operation.WEAKEN)


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A stop for each tight muscle that is left as it is while it or its antagonist is operated."""
    for eye, muscle in tight_muscles(situation.examination):
        yield from _not_released(eye, muscle, draft.doses)


def _not_released(eye: Eye, tight: Muscle, doses: tuple[Dose, ...]) -> Iterator[Notice]:
    axis = (tight, ANTAGONIST[tight])
    here = [dose for dose in doses if dose.eye is eye and dose.muscle in axis]
    changed = [dose for dose in here if dose.operation is not Operation.TRANSPOSE]
    if not changed or any(dose.muscle is tight and dose.operation in RELEASES for dose in changed):
        return
    yield Notice(
        code=f"not_released-{eye}-{tight.lower()}",
        text=f"The {eye} {tight.words} is tight, and this operation pulls against it without releasing it.",
        provenance=TEACHING,
        facts={"eye": eye.value, "muscle": tight.value},
        level=Level.STOP,
    )
