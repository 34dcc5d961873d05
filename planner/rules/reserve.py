"""What earlier operations spared of a muscle: further in the same direction only as far as the widest maximum."""

from __future__ import annotations

from collections.abc import Iterator
from math import fsum

from planner.dosing.draft import Draft, source_of
from planner.dosing.widest import widest_mm
from planner.figures import mm
from planner.maxima import CONVENTIONAL, maximum_of
from planner.situation import Situation
from planner.thresholds import exceeds
from planner.values.option import Dose
from planner.values.statement import Level, Notice


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A stop where both operations together exceed the widest maximum, a caution where that cannot be told."""
    for dose in draft.doses:
        before = [
            each for each in situation.earlier(dose.eye, dose.muscle) if each.operation.value == dose.operation.value
        ]
        maximum = maximum_of(dose.muscle, dose.operation, draft.recipe.family)
        if not before or maximum is None:
            continue
        known_mm = fsum(each.mm or 0.0 for each in before)
        own_mm = widest_mm(source_of(situation, draft.recipe), dose.muscle, dose.operation)
        most_mm = max(own_mm, maximum.widest_mm)
        if exceeds(known_mm + dose.figure_mm, most_mm):
            yield _too_much(dose, known_mm, most_mm)
        elif situation.spent_mm(dose.eye, dose.muscle, dose.operation) is None:
            yield _unknown(dose, most_mm)


def _what(dose: Dose) -> str:
    return f"{dose.eye.capitalize()} eye: {dose.muscle.words}"


def _unknown(dose: Dose, most_mm: float) -> Notice:
    return Notice(
        code=f"reserve_unknown-{dose.eye}-{dose.muscle.lower()}",
        text=(
            f"{_what(dose)}, an earlier {dose.operation.noun} of unknown size: what remains to the widest maximum of "
            f"{mm(most_mm)} cannot be told."
        ),
        provenance=CONVENTIONAL,
        facts={"eye": dose.eye.value, "muscle": dose.muscle.value, "limit_mm": most_mm},
        level=Level.CAUTION,
    )


def _too_much(dose: Dose, spent_mm: float, most_mm: float) -> Notice:
    room_mm = max(0.0, most_mm - spent_mm)
    return Notice(
        code=f"reserve_exceeded-{dose.eye}-{dose.muscle.lower()}",
        text=(
            f"{_what(dose)}, {mm(spent_mm)} of {dose.operation.noun} before: {mm(room_mm)} remain to the widest "
            f"maximum of {mm(most_mm)}, this operation takes {mm(dose.figure_mm)}."
        ),
        provenance=CONVENTIONAL,
        facts={
            "eye": dose.eye.value,
            "muscle": dose.muscle.value,
            "spent_mm": spent_mm,
            "room_mm": round(room_mm, 2),
            "limit_mm": most_mm,
        },
        level=Level.STOP,
    )
