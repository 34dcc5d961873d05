"""What a chart shows. Each layer has a name for the key, "" where it needs none."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Literal


class Shape(StrEnum):
    """What a point looks like."""

    DISC = "disc"
    RING = "ring"
    SQUARE = "square"
    DIAMOND = "diamond"
    TRIANGLE = "triangle"
    CROSS = "cross"


@dataclass(frozen=True, kw_only=True)
class Point:
    """``reach`` is half its whisker; ``words`` stand beside it where there is room; it is ``size`` times the usual."""

    x: float
    y: float
    reach: float | None = None
    words: str = ""
    size: float = 1.0


@dataclass(frozen=True, kw_only=True)
class Points:
    """Points of one kind."""

    name: str
    shape: Shape
    points: tuple[Point, ...]


@dataclass(frozen=True, kw_only=True)
class Line:
    """A line through places."""

    name: str
    places: tuple[tuple[float, float], ...]
    dashed: bool = False
    weight_mm: float = 0.5


@dataclass(frozen=True, kw_only=True)
class Band:
    """A tone between two lines; each edge is ``(x, low, high)``."""

    name: str
    edges: tuple[tuple[float, float, float], ...]


@dataclass(frozen=True, kw_only=True)
class Bar:
    """From ``start`` to ``end`` on the horizontal axis, as high as ``height``, in ink where it ``stands_out``."""

    start: float
    end: float
    height: float
    stands_out: bool = False


@dataclass(frozen=True, kw_only=True)
class Bars:
    """Bars that stand on 0; ``name`` is said of the toned, ``outstanding`` of those in ink."""

    name: str
    bars: tuple[Bar, ...]
    outstanding: str = ""


@dataclass(frozen=True, kw_only=True)
class Level:
    """A line all through the plot at one figure of the ``upright`` or the ``horizontal`` axis."""

    name: str
    at: float
    axis: Literal["upright", "horizontal"] = "upright"
    dashed: bool = True


@dataclass(frozen=True, kw_only=True)
class Identity:
    """Where both figures are the same."""

    name: str


Layer = Points | Line | Band | Bars | Level | Identity


def steps(places: Sequence[tuple[float, ...]], end: float) -> tuple[tuple[float, ...], ...]:
    """The places of a line, or the edges of a band, that keeps its figures until the next place, and until ``end``."""
    turned: list[tuple[float, ...]] = []
    for number, place in enumerate(places):
        until = places[number + 1][0] if number + 1 < len(places) else max(end, place[0])
        turned += [place, (until, *place[1:])]
    return tuple(turned)
