"""Where the figures come from: table, engine, how distances are measured; and what the card is not."""

from __future__ import annotations

from planner.card.pdf.faces import Face
from planner.card.pdf.ink import Block, stack
from planner.card.pdf.scale import LEFT, Scale
from planner.card.pdf.text import paragraph
from planner.values.card import Card


def origin(card: Card, scale: Scale, across: float) -> Block:
    """Small print, but never smaller than it can be read."""
    size = max(7.0, scale.prose - 2)
    table = card.table
    sentences = (
        f"Table: {table.name} ({table.provenance.mark.value}: {table.provenance.source}).",
        table.caution,
        f"{card.distances_words}",
        f"Primary Position, engine {card.engine_version}.",
    )
    return stack(
        (
            paragraph(" ".join(sentence for sentence in sentences if sentence), Face.REGULAR, size, LEFT, across),
            paragraph(card.disclaimer, Face.BOLD, size, LEFT, across),
        ),
        gap=size * 0.3,
    )
