"""Strokes along one muscle in one view."""

from __future__ import annotations

from dataclasses import dataclass

from planner.pictures.frame import Frame, Place
from planner.pictures.muscles import Run, middle
from planner.values.picture import Fill, Stroke

FINE, PLAIN, BOLD = 0.25, 0.45, 0.95


@dataclass(frozen=True)
class Brush:
    """Draws in mm back from the insertion and mm to the side."""

    frame: Frame
    run: Run

    def line(self, *places: Place, weight: float = PLAIN, dashed: bool = False) -> Stroke:
        """Through places of ``(along, aside)``."""
        return Stroke(points=self._points(*places), weight_mm=weight, dashed=dashed)

    def band(self, start: float, end: float, *, fill: Fill = Fill.TONE, quiet: bool = False) -> Stroke:
        """The whole width of the muscle."""
        outline = (
            (start, -self.run.half(start)),
            (start, self.run.half(start)),
            (end, self.run.half(end)),
            (end, -self.run.half(end)),
        )
        weight = FINE if quiet else PLAIN
        return Stroke(points=self._points(*outline), weight_mm=weight, closed=True, quiet=quiet, fill=fill)

    def half_band(self, start: float, end: float) -> Stroke:
        """The half that lies in front at an oblique's insertion: the one nearer to the limbus."""
        outline = ((start, self._front(start)), (start, 0.0), (end, 0.0), (end, self._front(end)))
        return Stroke(points=self._points(*outline), weight_mm=PLAIN, closed=True, fill=Fill.INK)

    def bar(self, along: float, *, weight: float = BOLD, dashed: bool = False) -> Stroke:
        """Across the muscle and a little beyond."""
        half = self.run.half(along) + 0.9
        return self.line((along, -half), (along, half), weight=weight, dashed=dashed)

    def crosses(self, start: float, end: float) -> tuple[Stroke, ...]:
        """What is taken out, crossed out."""
        a, b = self.run.half(start), self.run.half(end)
        return (self.line((start, -a), (end, b), weight=FINE), self.line((start, a), (end, -b), weight=FINE))

    def arrow(self, start: float, end: float) -> tuple[Stroke, ...]:
        """Along the middle line, its head at ``end``."""
        back = 1.7 if end > start else -1.7
        return (self.line((start, 0.0), (end, 0.0)), self.line((end - back, -1.2), (end, 0.0), (end - back, 1.2)))

    def zigzag(self, start: float, end: float) -> Stroke:
        """A fold."""
        half = self.run.half(start) + 1.6
        quarter = (end - start) / 4
        places = ((start, 0.0), (start + quarter, half), (start + 2 * quarter, -half), (start + 3 * quarter, half))
        return self.line(*places, (end, 0.0), weight=BOLD)

    def straight(self, start: Place, end: Place) -> tuple[Stroke, ...]:
        """An arrow between two places on the face."""
        (x, y), (to_x, to_y) = start, end
        length = ((to_x - x) ** 2 + (to_y - y) ** 2) ** 0.5
        way_x, way_y = (to_x - x) / length, (to_y - y) / length
        back_x, back_y = to_x - way_x * 2.2, to_y - way_y * 2.2
        head = (
            (back_x - way_y * 1.5, back_y + way_x * 1.5),
            end,
            (back_x + way_y * 1.5, back_y - way_x * 1.5),
        )
        return (
            Stroke(points=self.frame.points(start, end), weight_mm=BOLD),
            Stroke(points=self.frame.points(*head), weight_mm=BOLD),
        )

    def _front(self, along: float) -> float:
        """The edge that lies nearer to the middle of the cornea than the other."""
        half = self.run.half(along)
        x, y = middle(self.run.eye)
        return min((half, -half), key=lambda aside: _far(self.run.at(0.0, aside), (x, y)))

    def _points(self, *places: Place) -> tuple[Place, ...]:
        return self.frame.points(*(self.run.at(along, aside) for along, aside in places))


def _far(one: Place, other: Place) -> float:
    return (one[0] - other[0]) ** 2 + (one[1] - other[1]) ** 2
