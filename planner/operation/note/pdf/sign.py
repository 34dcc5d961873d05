"""A sentence behind its word in a frame: what must not be read over."""

from __future__ import annotations

from planner.card.pdf.faces import Face, width
from planner.card.pdf.ink import Block, Path, beside
from planner.card.pdf.text import BASELINE, line, paragraph

PAD = 3.0


def sign(label: str, words: str, size: float, x: float, across: float) -> Block:
    """The label framed, the sentence in full beside it."""
    framed = width(label, Face.BOLD, size) + 2 * PAD
    words_x = x + framed + size * 0.7
    top, bottom = 0.5, size * (BASELINE + 0.3)
    box = Path(points=((x, top), (x + framed, top), (x + framed, bottom), (x, bottom)), line=size * 0.11, closed=True)
    return beside(
        Block(height=bottom, marks=(box,)),
        line(label, Face.BOLD, size, x + PAD),
        paragraph(words, Face.REGULAR, size, words_x, x + across - words_x),
    )
