"""A caution: a triangle, the word, and the sentence beside them."""

from __future__ import annotations

from planner.card.pdf.faces import Face, width
from planner.card.pdf.ink import Block, Path, beside
from planner.card.pdf.scale import Scale
from planner.card.pdf.text import line, paragraph


def warning(words: str, scale: Scale, x: float, across: float) -> Block:
    """The sentence in full, indented beside its sign."""
    size = scale.prose
    label_x = x + size * 1.6
    words_x = label_x + width("CAUTION", Face.BOLD, size) + size * 0.8
    return beside(
        Block(height=size, marks=triangle(x, size)),
        line("CAUTION", Face.BOLD, size, label_x),
        paragraph(words, Face.REGULAR, size, words_x, x + across - words_x),
    )


def triangle(x: float, size: float) -> tuple[Path, ...]:
    """The sign alone."""
    bottom, top, wide = size * 0.98, size * 0.1, size * 1.1
    middle = x + wide / 2
    return (
        Path(points=((x, bottom), (middle, top), (x + wide, bottom)), line=size * 0.11, closed=True),
        Path(points=((middle, size * 0.42), (middle, size * 0.68)), line=size * 0.14),
        Path(points=((middle, size * 0.77), (middle, size * 0.88)), line=size * 0.14),
    )
