"""A chart as a picture: axes, layers, words, key."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from planner.charts.axis import Axis
from planner.charts.key import ROW_MM, Entry, key, rows
from planner.charts.labels import SIZE_MM, beside
from planner.charts.layers import Layer, Points
from planner.charts.painting import painted
from planner.charts.plane import Plane, reach
from planner.precision.steady import steady
from planner.values.picture import Anchor, Label, Mark, Picture, Stroke, View

WIDTH_MM: Final = 100.0
PLOT_MM: Final = 56.0
TITLE_MM: Final = 6.0
TICK_MM: Final = 1.2
GRID_MM: Final = 0.12
APART_MM: Final = 1.5
MARGIN_MM: Final = 3.0
"""Free at the end, where half of the last tick's words stand."""


@dataclass(frozen=True, kw_only=True)
class Chart:
    """``spoken`` is the chart for who does not see it: what is shown, and what can be seen in it."""

    title: str
    spoken: str
    horizontal: Axis
    upright: Axis
    layers: tuple[Layer, ...]
    plot_mm: float = PLOT_MM


def draw(chart: Chart) -> Picture:
    """The picture, :data:`WIDTH_MM` wide whatever it holds; the layers lie in their order, the first lowest."""
    entries = rows(chart.layers, WIDTH_MM)
    left = max(reach(tick.words, SIZE_MM) for tick in chart.upright.ticks) + TICK_MM + 1.0
    plane = Plane(
        left=steady(left, 2),
        top=TITLE_MM,
        right=WIDTH_MM - MARGIN_MM,
        bottom=TITLE_MM + chart.plot_mm,
        horizontal=chart.horizontal,
        upright=chart.upright,
    )
    below = plane.bottom + TICK_MM + SIZE_MM + TITLE_MM
    return Picture(
        view=View.CHART,
        title=chart.title,
        spoken=chart.spoken,
        width_mm=WIDTH_MM,
        height_mm=steady(below + len(entries) * ROW_MM + 1.0, 2),
        marks=tuple(_marks(chart, plane, entries, below)),
    )


def _marks(chart: Chart, plane: Plane, entries: tuple[tuple[Entry, ...], ...], below: float) -> Iterator[Mark]:
    yield from _grid(plane)
    for layer in chart.layers:
        yield from painted(layer, plane)
    yield Stroke(
        points=((plane.left, plane.top), (plane.left, plane.bottom), (plane.right, plane.bottom)), weight_mm=0.35
    )
    yield from _across(plane)
    yield from _up(plane)
    yield from beside([layer for layer in chart.layers if isinstance(layer, Points)], plane)
    yield Label(x=0.0, y=SIZE_MM / 2, words=chart.upright.title, size_mm=SIZE_MM, anchor=Anchor.START)
    at = steady(plane.bottom + TICK_MM + SIZE_MM * 1.9, 2)
    yield Label(x=plane.right, y=at, words=chart.horizontal.title, size_mm=SIZE_MM, anchor=Anchor.END)
    yield from key(entries, below)


def _grid(plane: Plane) -> Iterator[Mark]:
    for tick in plane.upright.ticks:
        y = plane.y(tick.at)
        yield Stroke(points=((plane.left, y), (plane.right, y)), weight_mm=GRID_MM, quiet=True)


def _across(plane: Plane) -> Iterator[Mark]:
    """The ticks, with words wherever they do not come too close to those before."""
    y = steady(plane.bottom + TICK_MM + SIZE_MM * 0.7, 2)
    free = -WIDTH_MM
    for tick in plane.horizontal.ticks:
        x = plane.x(tick.at)
        yield Stroke(points=((x, plane.bottom), (x, plane.bottom + TICK_MM)), weight_mm=0.25)
        half = reach(tick.words, SIZE_MM) / 2
        middle = min(x, WIDTH_MM - half)
        if middle - half >= free:
            yield Label(x=steady(middle, 2), y=y, words=tick.words, size_mm=SIZE_MM)
            free = middle + half + APART_MM


def _up(plane: Plane) -> Iterator[Mark]:
    for tick in plane.upright.ticks:
        y = plane.y(tick.at)
        yield Stroke(points=((plane.left - TICK_MM, y), (plane.left, y)), weight_mm=0.25)
        x = steady(plane.left - TICK_MM - 0.6, 2)
        yield Label(x=x, y=y, words=tick.words, size_mm=SIZE_MM, anchor=Anchor.END)
