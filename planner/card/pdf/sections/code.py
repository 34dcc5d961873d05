"""The code that opens the same card on a tablet without a network, or why there is none."""

from __future__ import annotations

from planner.card.pdf.faces import Face
from planner.card.pdf.ink import Block, Modules, stack
from planner.card.pdf.qr import QUIET, modules
from planner.card.pdf.scale import Scale
from planner.card.pdf.text import line, paragraph
from planner.values.card import Card

SIDE = 128.0
"""45 mm with the quiet zone: modules of half a millimetre for an ordinary plan."""


def code(card: Card, scale: Scale, x: float) -> Block:
    """A square of :data:`SIDE` and what it is for."""
    if not card.code:
        words = card.no_code_words or "No code: this device has no card key of the clinic."
        return paragraph(words, Face.REGULAR, max(7.0, scale.prose - 2), x, SIDE)
    rows = modules(card.code)
    side = SIDE / (len(rows) + 2 * QUIET)
    square = Modules(x=x + QUIET * side, y=QUIET * side, side=side, rows=rows)
    return stack(
        (Block(height=SIDE, marks=(square,)), line("Opens this card in the app, offline.", Face.REGULAR, 7, x))
    )
