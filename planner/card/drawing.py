"""The pictures of a card, made from its doses."""

from __future__ import annotations

from planner.pictures import Work, both_eyes
from planner.values.option import Dose
from planner.values.picture import Picture, View

VIEWS = (View.FACING, View.FROM_THE_HEAD)


def work_of(dose: Dose) -> Work:
    """What is shown of a dose."""
    return Work(
        eye=dose.eye,
        muscle=dose.muscle,
        operation=dose.operation,
        mm=dose.mm,
        insertion_mm=dose.insertion_mm,
        limbus_mm=dose.limbus_mm,
        offset=dose.offset.direction if dose.offset else None,
    )


def pictures(doses: tuple[Dose, ...]) -> tuple[Picture, ...]:
    """Both eyes in each view."""
    works = tuple(work_of(dose) for dose in doses)
    return tuple(both_eyes(works, view) for view in VIEWS)
