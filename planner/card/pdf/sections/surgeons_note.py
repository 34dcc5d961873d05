"""What the surgeon wrote under the plan."""

from __future__ import annotations

from planner.card.pdf.faces import Face
from planner.card.pdf.ink import NOTHING, Block, stack
from planner.card.pdf.scale import ACROSS, LEFT, Scale
from planner.card.pdf.text import broken, line
from planner.values.card import Card


def surgeons_note(card: Card, scale: Scale) -> Block:
    """The note in full, or as many lines as the scale allows and a line that says how many are missing."""
    if not card.plan_note:
        return NOTHING
    lines = broken(card.plan_note, Face.REGULAR, scale.prose, ACROSS)
    shown = lines if scale.note_lines is None else lines[: scale.note_lines]
    missing = len(lines) - len(shown)
    ending = f"The note goes on for {missing} more lines: read it on the screen." if missing else ""
    return stack(
        (
            line("Surgeon's note", Face.BOLD, scale.prose, LEFT),
            *(line(words, Face.REGULAR, scale.prose, LEFT) for words in shown),
            line(ending, Face.BOLD, scale.prose, LEFT) if ending else NOTHING,
        )
    )
