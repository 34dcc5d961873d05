"""From figures to millimetres of the picture."""

from __future__ import annotations

from dataclasses import dataclass

from planner.charts.axis import Axis
from planner.precision.steady import steady

LETTER = 0.6
"""How far a letter runs at most on average, as a part of its size: wider than the faces of screens and paper."""


@dataclass(frozen=True, kw_only=True)
class Plane:
    """The plot's own rectangle in the picture, and its axes."""

    left: float
    top: float
    right: float
    bottom: float
    horizontal: Axis
    upright: Axis

    def x(self, figure: float) -> float:
        """Across."""
        return steady(self.left + self.horizontal.share(figure) * (self.right - self.left), 2)

    def y(self, figure: float) -> float:
        """Down."""
        return steady(self.bottom - self.upright.share(figure) * (self.bottom - self.top), 2)

    def at(self, place: tuple[float, float]) -> tuple[float, float]:
        """A place of both figures."""
        return self.x(place[0]), self.y(place[1])


def reach(words: str, size_mm: float) -> float:
    """How far words run."""
    return len(words) * LETTER * size_mm
