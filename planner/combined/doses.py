"""The muscles of several options: each once, a moved tendon on the dose of its muscle."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from planner.anatomy import Eye, Muscle
from planner.values.option import Dose, Operation, Option


@dataclass(frozen=True, kw_only=True)
class United:
    """``doses``, the right eye's first; ``twice`` are the muscles that more than one option operates."""

    doses: tuple[Dose, ...]
    twice: tuple[tuple[Eye, Muscle], ...]


def united(parts: Sequence[Option]) -> United:
    """All doses of the parts."""
    of_muscle: dict[tuple[Eye, Muscle], list[Dose]] = {}
    for part in parts:
        for dose in part.doses:
            of_muscle.setdefault((dose.eye, dose.muscle), []).append(dose)
    merged = {key: _merged(doses) for key, doses in of_muscle.items()}
    return United(
        doses=tuple(dose for eye in Eye for key, doses in merged.items() if key[0] is eye for dose in doses),
        twice=tuple(key for key, doses in merged.items() if len(doses) > 1),
    )


def _merged(doses: list[Dose]) -> list[Dose]:
    """An offset beside one other dose goes onto it; anything else stays as it is."""
    offsets = [dose for dose in doses if dose.operation is Operation.TRANSPOSE]
    others = [dose for dose in doses if dose.operation is not Operation.TRANSPOSE]
    if len(offsets) == len(others) == 1:
        (offset,), (other,) = offsets, others
        return [replace(other, offset=offset.offset, steps=(*other.steps, *offset.steps))]
    return doses
