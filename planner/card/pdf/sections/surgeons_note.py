"""What the surgeon wrote under the plan."""

from __future__ import annotations

from planner.card.pdf.faces import Face
from planner.card.pdf.ink import NOTHING, Block, stack
from planner.card.pdf.scale import ACROSS, LEFT, Scale
from planner.card.pdf.text import line, paragraph
from planner.values.card import Card


def surgeons_note(card: Card, scale: Scale) -> Block:
    """The note in full."""
    if not card.plan_note:
        return NOTHING
    return stack(
        (
            line("Surgeon's note", Face.BOLD, scale.prose, LEFT),
            paragraph(card.plan_note, Face.REGULAR, scale.prose, LEFT, ACROSS),
        )
    )
