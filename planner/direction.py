"""Eso or exo: what decides which muscle is weakened and which strengthened."""

from __future__ import annotations

from enum import StrEnum

from planner.anatomy import Muscle


class Direction(StrEnum):
    """The sense of a horizontal deviation."""

    ESO = "eso"
    EXO = "exo"

    @property
    def sign(self) -> int:
        """+1 for eso, -1 for exo, as on the deviation scale."""
        return 1 if self is Direction.ESO else -1

    @property
    def words(self) -> str:
        """The deviation's name."""
        return "esodeviation" if self is Direction.ESO else "exodeviation"

    @property
    def recessed(self) -> Muscle:
        """The muscle that is weakened to correct it."""
        return Muscle.MR if self is Direction.ESO else Muscle.LR

    @property
    def resected(self) -> Muscle:
        """The muscle that is strengthened to correct it."""
        return Muscle.LR if self is Direction.ESO else Muscle.MR


def direction_of(horizontal_pd: float) -> Direction:
    """The direction of a deviation that is not zero."""
    return Direction.ESO if horizontal_pd > 0 else Direction.EXO
