"""What each shape and stroke means, under the plot."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from planner.charts.labels import SIZE_MM
from planner.charts.layers import Band, Bars, Identity, Layer, Level, Line, Points
from planner.charts.painting import FINE_MM, shape
from planner.charts.plane import reach
from planner.precision.steady import steady
from planner.values.picture import Anchor, Fill, Label, Mark, Stroke

ROW_MM = 5.2
SAMPLE_MM = 7.0
GAP_MM = 4.0


@dataclass(frozen=True, kw_only=True)
class Entry:
    """A layer, or the bars that stand out of one, by name."""

    layer: Layer
    name: str
    stands_out: bool = False


def rows(layers: Sequence[Layer], width_mm: float) -> tuple[tuple[Entry, ...], ...]:
    """The entries in as many rows as they need."""
    found: list[list[Entry]] = []
    end = width_mm
    for entry in _entries(layers):
        across = SAMPLE_MM + reach(entry.name, SIZE_MM)
        if not found or end + GAP_MM + across > width_mm:
            found.append([entry])
            end = across
        else:
            found[-1].append(entry)
            end += GAP_MM + across
    return tuple(tuple(row) for row in found)


def key(entries: Sequence[Sequence[Entry]], top: float) -> Iterator[Mark]:
    """The rows, the first of them from ``top`` down."""
    for number, row in enumerate(entries):
        x, y = 0.0, steady(top + (number + 0.5) * ROW_MM, 2)
        for entry in row:
            yield from _sample(entry, x, y)
            at = steady(x + SAMPLE_MM, 2)
            yield Label(x=at, y=y, words=entry.name, size_mm=SIZE_MM, anchor=Anchor.START)
            x = steady(at + reach(entry.name, SIZE_MM) + GAP_MM, 2)


def _entries(layers: Sequence[Layer]) -> Iterator[Entry]:
    for layer in layers:
        if layer.name:
            yield Entry(layer=layer, name=layer.name)
        if isinstance(layer, Bars) and layer.outstanding:
            yield Entry(layer=layer, name=layer.outstanding, stands_out=True)


def _sample(entry: Entry, x: float, y: float) -> Iterator[Mark]:
    end, middle = steady(x + 5.4, 2), steady(x + 2.7, 2)
    upper, lower = steady(y - 1.3, 2), steady(y + 1.3, 2)
    across = ((x, y), (end, y))
    match entry.layer:
        case Points(shape=which):
            yield from shape(which, middle, y)
        case Line(dashed=dashed, weight_mm=weight):
            yield Stroke(points=across, weight_mm=weight, dashed=dashed)
        case Level(dashed=dashed):
            yield Stroke(points=across, weight_mm=0.4, dashed=dashed)
        case Identity():
            yield Stroke(points=across, weight_mm=FINE_MM, dashed=True)
        case Band():
            corners = ((x, upper), (end, upper), (end, lower), (x, lower))
            yield Stroke(points=corners, weight_mm=0.0, closed=True, quiet=True, fill=Fill.TONE)
            for edge in (corners[:2], corners[2:]):
                yield Stroke(points=edge, weight_mm=FINE_MM, dashed=True, quiet=True)
        case Bars():
            corners = ((x, upper), (end, upper), (end, lower), (x, lower))
            fill = Fill.INK if entry.stands_out else Fill.TONE
            yield Stroke(points=corners, weight_mm=FINE_MM, closed=True, fill=fill)
