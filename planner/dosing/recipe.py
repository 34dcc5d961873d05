"""An operation without its doses."""

from __future__ import annotations

from dataclasses import dataclass

from planner.anatomy import Eye, Muscle
from planner.series import Series
from planner.tables import Form
from planner.values.option import Family, Operation


@dataclass(frozen=True, kw_only=True)
class Move:
    """What is done to one muscle, and the form of the column that doses it."""

    eye: Eye
    muscle: Muscle
    operation: Operation
    form: Form


@dataclass(frozen=True, kw_only=True)
class Recipe:
    """An operation for a horizontal deviation; the right eye's moves stand first.

    ``series`` doses it where it is not dosed by the case's table.
    """

    id: str
    family: Family
    title: str
    moves: tuple[Move, ...]
    series: Series | None = None

    @property
    def eyes(self) -> frozenset[Eye]:
        """The eyes that are operated."""
        return frozenset(move.eye for move in self.moves)

    def row_pd(self, size_pd: float) -> float:
        """The row that answers a deviation of ``size_pd``: 2 D / n in a table, D in a series."""
        return size_pd if self.series else 2 * size_pd / len(self.moves)
