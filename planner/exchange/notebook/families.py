"""Which muscles an operation moves, how each is dosed, and the direction of the deviation that it answers."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from planner.anatomy import Muscle
from planner.direction import Direction
from planner.records.notebook import HorizontalFamily
from planner.tables import Form
from planner.values.option import Operation


@dataclass(frozen=True, kw_only=True)
class Moved:
    """One kind of work: on the same muscle of both eyes, or of one."""

    muscle: Muscle
    operation: Operation
    form: Form
    both_eyes: bool

    @property
    def muscles(self) -> int:
        """How many muscles that is."""
        return 2 if self.both_eyes else 1


@dataclass(frozen=True, kw_only=True)
class Work:
    """What a family does."""

    direction: Direction
    moved: tuple[Moved, ...]

    @property
    def muscles(self) -> int:
        """How many muscles are operated."""
        return sum(each.muscles for each in self.moved)


def _work(direction: Direction, *moved: tuple[Operation, Form, bool]) -> Work:
    muscles = {Operation.RECESS: direction.recessed, Operation.RESECT: direction.resected}
    return Work(
        direction=direction,
        moved=tuple(
            Moved(muscle=muscles[operation], operation=operation, form=form, both_eyes=both)
            for operation, form, both in moved
        ),
    )


RECESS_BOTH = (Operation.RECESS, Form.BOTH, True)
RESECT_BOTH = (Operation.RESECT, Form.BOTH, True)
RECESS_ONE = (Operation.RECESS, Form.BOTH, False)
RESECT_ONE = (Operation.RESECT, Form.BOTH, False)
RECESS_OF_PAIR = (Operation.RECESS, Form.ONE, False)
RESECT_OF_PAIR = (Operation.RESECT, Form.ONE, False)

WORK: Final = {
    HorizontalFamily.RECESS_BOTH_MR: _work(Direction.ESO, RECESS_BOTH),
    HorizontalFamily.RESECT_BOTH_LR: _work(Direction.ESO, RESECT_BOTH),
    HorizontalFamily.RECESS_MR_RESECT_LR: _work(Direction.ESO, RECESS_OF_PAIR, RESECT_OF_PAIR),
    HorizontalFamily.RECESS_MR: _work(Direction.ESO, RECESS_ONE),
    HorizontalFamily.RESECT_LR: _work(Direction.ESO, RESECT_ONE),
    HorizontalFamily.RECESS_BOTH_MR_RESECT_LR: _work(Direction.ESO, RECESS_BOTH, RESECT_OF_PAIR),
    HorizontalFamily.RECESS_BOTH_LR: _work(Direction.EXO, RECESS_BOTH),
    HorizontalFamily.RESECT_BOTH_MR: _work(Direction.EXO, RESECT_BOTH),
    HorizontalFamily.RECESS_LR_RESECT_MR: _work(Direction.EXO, RECESS_OF_PAIR, RESECT_OF_PAIR),
    HorizontalFamily.RECESS_LR: _work(Direction.EXO, RECESS_ONE),
    HorizontalFamily.RESECT_MR: _work(Direction.EXO, RESECT_ONE),
    HorizontalFamily.RECESS_BOTH_LR_RESECT_MR: _work(Direction.EXO, RECESS_BOTH, RESECT_OF_PAIR),
}
"""The forms are those of :mod:`planner.options`: one muscle by the column for both eyes, a third by that for one."""
