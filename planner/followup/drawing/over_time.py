"""One deviation at one range over time."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Final

from planner import charts
from planner.charts import Axis, Chart, Shape, Spacing, Tick
from planner.charts.layers import Layer
from planner.followup.drawing.spoken import spoken
from planner.followup.drawing.words import DIRECTIONS, deviation
from planner.precision.limits import Direction
from planner.records.examination import Range
from planner.values.follow_up import Line, Point, Ranges
from planner.values.picture import Picture

SHORTEST_DAYS: Final = 7
BEYOND: Final = 1.05
"""So that the last point does not stand on the edge."""
ADJUSTMENT: Final = ("Before adjustment", "After adjustment")


def pictures(horizontal: Ranges, vertical: Ranges) -> tuple[Picture, ...]:
    """Distance and near of each direction that was found or expected at all."""
    return tuple(
        charts.draw(_chart(direction, at, line, ranges))
        for direction, ranges in ((Direction.HORIZONTAL, horizontal), (Direction.VERTICAL, vertical))
        for at, line in ((Range.DISTANCE, ranges.distance), (Range.NEAR, ranges.near))
        if line.points or line.expected or line.before_pd
    )


def _chart(direction: Direction, at: Range, line: Line, ranges: Ranges) -> Chart:
    """Both ranges of a direction have the same axes, so that they can be laid beside each other."""
    title = f"{direction.value.capitalize()} deviation at {at}"
    both = (ranges.distance, ranges.near)
    days = max((point.days_after for each in both for point in each.points), default=0)
    across = _days(line.points, max(days, SHORTEST_DAYS))
    return Chart(
        title=title,
        spoken=spoken(title, direction, line),
        horizontal=across,
        upright=_prisms(direction, [value for each in both for value in _values(each)]),
        layers=tuple(_layers(direction, line, across)),
    )


def _days(points: Sequence[Point], last: int) -> Axis:
    """The visits by their names, on their days."""
    named = {max(point.days_after, 0): point.at for point in points if point.at not in ADJUSTMENT}
    ticks = (Tick(at=0.0, words="0"), *(Tick(at=day, words=named[day]) for day in sorted(named) if day > 0))
    return Axis(title="time after the operation", low=0.0, high=last * BEYOND, ticks=ticks, spacing=Spacing.ROOT)


def _prisms(direction: Direction, values: Sequence[float]) -> Axis:
    positive, negative = DIRECTIONS[direction]
    axis = charts.round_axis(f"Δ, {positive} above, {negative} below", [0.0, *values])
    ticks = tuple(Tick(at=tick.at, words=deviation(direction, tick.at).removesuffix(" Δ")) for tick in axis.ticks)
    return replace(axis, ticks=ticks)


def _values(line: Line) -> Iterator[float]:
    if line.before_pd is not None:
        yield line.before_pd
    if line.expected is not None:
        yield from (line.expected.low_pd, line.expected.high_pd)
    for point in line.points:
        reach = point.limits_pd or 0.0
        yield from (point.value_pd - reach, point.value_pd + reach)


def _layers(direction: Direction, line: Line, across: Axis) -> Iterator[Layer]:
    if line.expected is not None:
        band, ends = line.expected, (across.low, across.high)
        edges = tuple((day, band.low_pd, band.high_pd) for day in ends)
        yield charts.Band(name="expected by the plan, 95 of 100", edges=edges)
        yield charts.Line(name="its mean", places=tuple((day, band.mean_pd) for day in ends), dashed=True)
    yield charts.Level(name="", at=0.0, dashed=False)
    if line.before_pd is not None:
        yield charts.Level(name=f"before surgery, {deviation(direction, line.before_pd)}", at=line.before_pd)
    seen = [point for point in line.points if point.at not in ADJUSTMENT]
    if len(seen) > 1:
        yield charts.Line(name="", places=tuple((max(each.days_after, 0), each.value_pd) for each in seen))
    for name, shape in KINDS.items():
        points = tuple(_mark(direction, each) for each in line.points if _kind(each) == name)
        if points:
            yield charts.Points(name=name, shape=shape, points=points)


MEASURED, OUTSIDE, OTHERWISE = "measured", "outside what was expected", "with the other correction"
BEFORE, AFTER = "before the adjustment", "after the adjustment"
KINDS: Final = {
    BEFORE: Shape.TRIANGLE,
    AFTER: Shape.SQUARE,
    MEASURED: Shape.DISC,
    OTHERWISE: Shape.RING,
    OUTSIDE: Shape.DIAMOND,
}


def _kind(point: Point) -> str:
    """What a point is drawn as; outside of the band says more than how it was measured."""
    if point.at in ADJUSTMENT:
        return BEFORE if point.at == ADJUSTMENT[0] else AFTER
    if point.is_inside is False:
        return OUTSIDE
    return OTHERWISE if point.other_correction else MEASURED


def _mark(direction: Direction, point: Point) -> charts.Point:
    return charts.Point(
        x=max(point.days_after, 0),
        y=point.value_pd,
        reach=point.limits_pd,
        words=deviation(direction, point.value_pd).removesuffix(" Δ"),
    )
