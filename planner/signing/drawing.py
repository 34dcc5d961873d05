"""The plan drawn again, against the plan."""

from __future__ import annotations

from planner.records.plan import DrawnMuscle
from planner.values.comparison import Comparison
from planner.values.option import Dose, Option


def compare_drawing(option: Option, drawn: tuple[DrawnMuscle, ...]) -> Comparison:
    """The muscles, operations and offsets of ``option`` against ``drawn``, in any order; millimetres are not drawn."""
    missing = [_drawn(dose) for dose in option.doses]
    unexpected = []
    for each in drawn:
        if each in missing:
            missing.remove(each)
        else:
            unexpected.append(each)
    return Comparison(equal=not missing and not unexpected, missing=tuple(missing), unexpected=tuple(unexpected))


def _drawn(dose: Dose) -> DrawnMuscle:
    offset = dose.offset.direction if dose.offset else None
    return DrawnMuscle(eye=dose.eye, muscle=dose.muscle, operation=dose.operation, offset=offset)
