"""A picture as a value: marks in millimetres, shown on a screen and drawn on paper as they are."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class View(StrEnum):
    """How a picture is looked at; its words stand on it. A chart shows figures and no patient."""

    FACING = "facing the patient"
    FROM_THE_HEAD = "from the head of the table, as the surgeon sits"
    ALONG_THE_EYE = "along the eye"
    CHART = "a chart"


class Fill(StrEnum):
    """What a closed shape is filled with: nothing, the page, a light tone or the ink."""

    NONE = "none"
    PAGE = "page"
    TONE = "tone"
    INK = "ink"


class Anchor(StrEnum):
    """Which end of a text stands at its point."""

    START = "start"
    MIDDLE = "middle"
    END = "end"


@dataclass(frozen=True, kw_only=True)
class Stroke:
    """A line through ``points``, closed to a shape where it says so; ``quiet`` marks what is not operated."""

    points: tuple[tuple[float, float], ...]
    weight_mm: float
    closed: bool = False
    dashed: bool = False
    quiet: bool = False
    fill: Fill = Fill.NONE


@dataclass(frozen=True, kw_only=True)
class Disc:
    """A circle."""

    x: float
    y: float
    radius_mm: float
    weight_mm: float
    fill: Fill = Fill.NONE


@dataclass(frozen=True, kw_only=True)
class Label:
    """A text on one line; ``y`` is the middle of its height. ``clear``: on a ground of its own over what lies there."""

    x: float
    y: float
    words: str
    size_mm: float
    anchor: Anchor = Anchor.MIDDLE
    bold: bool = False
    clear: bool = False


Mark = Stroke | Disc | Label


@dataclass(frozen=True, kw_only=True)
class Picture:
    """Marks in drawing order on ``width_mm`` by ``height_mm``; x runs across, y down. ``spoken`` says it in words.

    A millimetre of the picture is a millimetre along the eye where the picture says so. Strokes, discs and labels are
    told apart by their fields: only a stroke has ``points``, only a disc a ``radius_mm``, only a label ``words``.
    """

    view: View
    title: str
    spoken: str
    width_mm: float
    height_mm: float
    marks: tuple[Mark, ...]
