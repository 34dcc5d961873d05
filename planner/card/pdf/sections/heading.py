"""Which eye, largest of all; then the operation by name, what it answers and what is expected of it."""

from __future__ import annotations

from planner.card.pdf.faces import Face
from planner.card.pdf.ink import Block, stack
from planner.card.pdf.scale import ACROSS, LEFT, Scale
from planner.card.pdf.text import line, paragraph
from planner.values.card import Card

EYES = 50.0


def heading(card: Card, scale: Scale) -> Block:
    """The eye words and the title."""
    return stack(
        (
            line(card.eyes_words, Face.BOLD, EYES * scale.lead, LEFT),
            paragraph(card.title, Face.BOLD, 13 * scale.lead, LEFT, ACROSS),
            paragraph(f"{card.deviation_words}. {card.expected_words}.", Face.REGULAR, scale.prose + 1, LEFT, ACROSS),
        )
    )
