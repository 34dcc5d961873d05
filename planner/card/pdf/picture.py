"""A picture in points on the page."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.pdf.faces import Face, width
from planner.card.pdf.ink import Block, Circle, Mark, Path, Words
from planner.values.picture import Anchor, Disc, Fill, Label, Picture, Stroke

GREYS = {Fill.NONE: None, Fill.PAGE: 1.0, Fill.TONE: 0.86, Fill.INK: 0.0}
MIDDLE_TO_BASELINE = 0.36
"""Of a text's size: from the middle of its capitals down to where it stands."""
GROUND = 0.5
"""Half the height of a clear ground, as a part of the size."""
SHARES = {Anchor.START: 0.0, Anchor.MIDDLE: 0.5, Anchor.END: 1.0}


def drawn(picture: Picture, x: float, across: float) -> Block:
    """The picture, ``across`` points wide."""
    scale = across / picture.width_mm
    marks = tuple(painted for mark in picture.marks for painted in _marks(mark, x, scale))
    return Block(height=picture.height_mm * scale, marks=marks)


def _marks(mark: Stroke | Disc | Label, x: float, scale: float) -> Iterator[Mark]:
    match mark:
        case Stroke():
            points = tuple((x + across * scale, down * scale) for across, down in mark.points)
            line = mark.weight_mm * scale
            yield Path(
                points=points,
                line=line,
                closed=mark.closed,
                dashed=mark.dashed,
                fill=GREYS[mark.fill],
                outlined=mark.weight_mm > 0,
            )
        case Disc():
            yield Circle(
                x=x + mark.x * scale,
                y=mark.y * scale,
                radius=mark.radius_mm * scale,
                line=mark.weight_mm * scale,
                fill=GREYS[mark.fill],
            )
        case Label():
            yield from _words(mark, x, scale)


def _words(mark: Label, x: float, scale: float) -> Iterator[Mark]:
    face, size = Face.BOLD if mark.bold else Face.REGULAR, mark.size_mm * scale
    across = width(mark.words, face, size)
    start, middle = x + mark.x * scale - across * SHARES[mark.anchor], mark.y * scale
    if mark.clear:
        upper, lower = middle - size * GROUND, middle + size * GROUND
        corners = ((start, upper), (start + across, upper), (start + across, lower), (start, lower))
        yield Path(points=corners, line=0, closed=True, fill=1.0, outlined=False)
    yield Words(x=start, y=middle + size * MIDDLE_TO_BASELINE, words=mark.words, face=face, size=size)
