"""Words beside points, so that none meets another nor leaves the plot; what has no place is left to the table."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from planner.charts.layers import Point, Points
from planner.charts.painting import POINT_MM
from planner.charts.plane import Plane, reach
from planner.precision.steady import steady
from planner.values.picture import Anchor, Label

SIZE_MM = 3.3
AWAY_MM = 1.0


@dataclass(frozen=True, kw_only=True)
class Box:
    """A rectangle of the picture."""

    left: float
    top: float
    right: float
    bottom: float

    def meets(self, other: Box) -> bool:
        """Whether the two share any of the page."""
        return (
            self.left < other.right and other.left < self.right and self.top < other.bottom and other.top < self.bottom
        )

    def lies_in(self, plane: Plane) -> bool:
        """Whether it lies in the plot as a whole."""
        return (
            plane.left <= self.left
            and self.right <= plane.right
            and plane.top <= self.top
            and self.bottom <= plane.bottom
        )


def box(label: Label) -> Box:
    """What a label takes of the page."""
    across = reach(label.words, label.size_mm)
    start = label.x - across * {Anchor.START: 0.0, Anchor.MIDDLE: 0.5, Anchor.END: 1.0}[label.anchor]
    half = label.size_mm / 2
    return Box(left=start, top=label.y - half, right=start + across, bottom=label.y + half)


def beside(layers: Sequence[Points], plane: Plane) -> Iterator[Label]:
    """The words of points, in their order, each above, below, after or before its point."""
    taken = [_of_point(point, plane) for layer in layers for point in layer.points]
    for layer in layers:
        for point in layer.points:
            if not point.words:
                continue
            for label in _places(point, plane):
                mine = box(label)
                if mine.lies_in(plane) and not any(mine.meets(other) for other in taken):
                    taken.append(mine)
                    yield label
                    break


def _of_point(point: Point, plane: Plane) -> Box:
    """The shape with its whisker."""
    x, y = plane.at((point.x, point.y))
    half, reach_ = POINT_MM * point.size, point.reach or 0.0
    return Box(
        left=x - half,
        top=min(y - half, plane.y(point.y + reach_)),
        right=x + half,
        bottom=max(y + half, plane.y(point.y - reach_)),
    )


def _places(point: Point, plane: Plane) -> Iterator[Label]:
    x, y = plane.at((point.x, point.y))
    taken = _of_point(point, plane)
    away = POINT_MM * point.size + AWAY_MM
    upright = ((x, taken.top - AWAY_MM - SIZE_MM / 2), (x, taken.bottom + AWAY_MM + SIZE_MM / 2))
    for (at_x, at_y), anchor in (
        (upright[0], Anchor.MIDDLE),
        (upright[1], Anchor.MIDDLE),
        ((x + away, y), Anchor.START),
        ((x - away, y), Anchor.END),
    ):
        yield Label(x=steady(at_x, 2), y=steady(at_y, 2), words=point.words, size_mm=SIZE_MM, anchor=anchor, clear=True)
