"""Doses that are the same in both eyes, so that one sentence speaks of both."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import groupby

from planner.anatomy import Eye, Muscle
from planner.figures import mm
from planner.values.option import Dose, Operation


@dataclass(frozen=True, kw_only=True)
class Alike:
    """One dose, in one eye or in both."""

    eyes: tuple[Eye, ...]
    muscle: Muscle
    operation: Operation
    mm: float

    @property
    def where(self) -> str:
        """The eye or eyes, to begin a sentence with."""
        return "Both eyes" if len(self.eyes) > 1 else f"{self.eyes[0].capitalize()} eye"

    @property
    def tag(self) -> str:
        """The eye or eyes and the muscle, to end a notice's code with."""
        return f"{'both' if len(self.eyes) > 1 else self.eyes[0]}-{self.muscle.lower()}"

    @property
    def what(self) -> str:
        """The muscle, operation and dose."""
        return f"{self.muscle.words} {self.operation.noun} of {mm(self.mm)}"


def alike(doses: Iterable[Dose]) -> Iterator[Alike]:
    """The doses that have a figure gathered by muscle, operation and millimetres, the largest of a muscle first."""
    figured = [dose for dose in doses if dose.mm is not None]
    ordered = sorted(figured, key=_key)
    for (muscle, operation, minus_mm), group in groupby(ordered, _key):
        yield Alike(eyes=tuple(dose.eye for dose in group), muscle=muscle, operation=operation, mm=-minus_mm)


def _key(dose: Dose) -> tuple[Muscle, Operation, float]:
    return dose.muscle, dose.operation, -dose.figure_mm
