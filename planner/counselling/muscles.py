"""What is planned, muscle by muscle, without the trade's words."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from planner.anatomy import Eye, Muscle
from planner.card.drawing import work_of
from planner.counselling.saying import says
from planner.figures import mm
from planner.values.counselling import PlannedMuscle, Said
from planner.values.option import Dose, OffsetDirection, Operation

EYES: Final = {Eye.RIGHT: says("RIGHT eye"), Eye.LEFT: says("LEFT eye")}

MUSCLES: Final = {
    Muscle.MR: says("the muscle on the side of the nose"),
    Muscle.LR: says("the muscle on the side of the ear"),
    Muscle.SR: says("the muscle above the eye"),
    Muscle.IR: says("the muscle below the eye"),
    Muscle.SO: says("the upper slanting muscle"),
    Muscle.IO: says("the lower slanting muscle"),
}

WITHOUT_A_FIGURE: Final = {
    Operation.RECESS: says("is moved back on the eye, so that it pulls less"),
    Operation.RESECT: says("is shortened, so that it pulls more"),
    Operation.WEAKEN: says("is loosened, so that it pulls less"),
    Operation.ANTERIORISE: says("is moved forward on the eye, so that it no longer pulls the eye up as much"),
    Operation.TRANSPOSE: says("is moved to another place on the eye, so that it pulls in another direction"),
    Operation.HARADA_ITO: says("has a part of its tendon moved, so that the eye is less tilted"),
    Operation.TUCK: says("is folded shorter, so that it pulls more"),
}
OFFSETS: Final = {
    OffsetDirection.UP: says("is moved a little towards the forehead"),
    OffsetDirection.DOWN: says("is moved a little towards the chin"),
}


def planned_muscles(doses: Sequence[Dose]) -> tuple[PlannedMuscle, ...]:
    """The muscles in the order given, numbered as in the picture."""
    return tuple(
        PlannedMuscle(
            number=number,
            eye=dose.eye,
            eye_words=EYES[dose.eye],
            muscle=MUSCLES[dose.muscle],
            done=tuple(_done(dose)),
            trade=work_of(dose).spoken,
        )
        for number, dose in enumerate(doses, start=1)
    )


def _done(dose: Dose) -> Iterator[Said]:
    match dose.operation, dose.mm:
        case Operation.RECESS, float(amount):
            yield says("is moved back on the eye by {mm}, so that it pulls less", mm=mm(amount))
        case Operation.RESECT, float(amount):
            yield says("is shortened by {mm}, so that it pulls more", mm=mm(amount))
        case Operation.TUCK, float(amount):
            yield says("is folded shorter by {mm}, so that it pulls more", mm=mm(amount))
        case Operation.TRANSPOSE, _ if dose.offset:
            pass
        case _:
            yield WITHOUT_A_FIGURE[dose.operation]
    if dose.offset:
        yield OFFSETS[dose.offset.direction]
