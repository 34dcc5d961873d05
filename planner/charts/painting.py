"""The strokes of each layer."""

from __future__ import annotations

from collections.abc import Iterator

from planner.charts.layers import Band, Bar, Bars, Identity, Layer, Level, Line, Points, Shape
from planner.charts.plane import Plane
from planner.precision.steady import steady
from planner.values.picture import Disc, Fill, Mark, Stroke

POINT_MM = 1.25
POINT_WEIGHT_MM = 0.35
FINE_MM = 0.25


def painted(layer: Layer, plane: Plane) -> Iterator[Mark]:
    """A layer in a plane; of points, all but their words."""
    match layer:
        case Band():
            yield from _band(layer, plane)
        case Bars():
            for bar in layer.bars:
                yield _bar(bar, plane)
        case Line():
            places = tuple(plane.at(place) for place in layer.places)
            yield Stroke(points=places, weight_mm=layer.weight_mm, dashed=layer.dashed)
        case Level():
            yield _level(layer, plane)
        case Identity():
            low, high = plane.horizontal.low, plane.horizontal.high
            yield Stroke(points=(plane.at((low, low)), plane.at((high, high))), weight_mm=FINE_MM, dashed=True)
        case Points():
            yield from _points(layer, plane)


def shape(which: Shape, x: float, y: float, size: float = 1.0) -> tuple[Mark, ...]:
    """A point of the picture."""
    half = steady(POINT_MM * size, 2)
    if which in (Shape.DISC, Shape.RING):
        fill = Fill.INK if which is Shape.DISC else Fill.NONE
        return (Disc(x=x, y=y, radius_mm=half, weight_mm=POINT_WEIGHT_MM, fill=fill),)
    if which is Shape.CROSS:
        return (
            Stroke(points=_moved(x, y, (-half, -half), (half, half)), weight_mm=POINT_WEIGHT_MM),
            Stroke(points=_moved(x, y, (-half, half), (half, -half)), weight_mm=POINT_WEIGHT_MM),
        )
    corners = {
        Shape.SQUARE: ((-half, -half), (half, -half), (half, half), (-half, half)),
        Shape.DIAMOND: ((0.0, -1.3 * half), (1.3 * half, 0.0), (0.0, 1.3 * half), (-1.3 * half, 0.0)),
        Shape.TRIANGLE: ((0.0, -1.2 * half), (1.15 * half, 0.9 * half), (-1.15 * half, 0.9 * half)),
    }[which]
    fill = Fill.PAGE if which is Shape.DIAMOND else Fill.INK
    return (Stroke(points=_moved(x, y, *corners), weight_mm=POINT_WEIGHT_MM, closed=True, fill=fill),)


def _moved(x: float, y: float, *places: tuple[float, float]) -> tuple[tuple[float, float], ...]:
    return tuple((steady(x + across, 2), steady(y + down, 2)) for across, down in places)


def _points(layer: Points, plane: Plane) -> Iterator[Mark]:
    for point in layer.points:
        x, y = plane.at((point.x, point.y))
        if point.reach is not None:
            yield from _whisker(x, plane.y(point.y - point.reach), plane.y(point.y + point.reach))
        yield from shape(layer.shape, x, y, point.size)


def _whisker(x: float, low: float, high: float) -> tuple[Mark, ...]:
    return (
        Stroke(points=((x, low), (x, high)), weight_mm=FINE_MM),
        *(Stroke(points=_moved(x, y, (-0.9, 0.0), (0.9, 0.0)), weight_mm=FINE_MM) for y in (low, high)),
    )


def _band(layer: Band, plane: Plane) -> Iterator[Mark]:
    lower = tuple(plane.at((x, low)) for x, low, _ in layer.edges)
    upper = tuple(plane.at((x, high)) for x, _, high in layer.edges)
    yield Stroke(points=(*lower, *reversed(upper)), weight_mm=0.0, closed=True, quiet=True, fill=Fill.TONE)
    for edge in (lower, upper):
        yield Stroke(points=edge, weight_mm=FINE_MM, dashed=True, quiet=True)


def _bar(bar: Bar, plane: Plane) -> Mark:
    start, end = plane.x(bar.start), plane.x(bar.end)
    foot, head = plane.y(0.0), plane.y(bar.height)
    return Stroke(
        points=((start, foot), (start, head), (end, head), (end, foot)),
        weight_mm=FINE_MM,
        closed=True,
        fill=Fill.INK if bar.stands_out else Fill.TONE,
    )


def _level(layer: Level, plane: Plane) -> Mark:
    if layer.axis == "upright":
        y = plane.y(layer.at)
        places = ((plane.left, y), (plane.right, y))
    else:
        x = plane.x(layer.at)
        places = ((x, plane.top), (x, plane.bottom))
    return Stroke(points=places, weight_mm=0.4, dashed=layer.dashed)
