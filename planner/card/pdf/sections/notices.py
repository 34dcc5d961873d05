"""Every caution and every note of the plan, whole, each with where it comes from."""

from __future__ import annotations

from planner.card.pdf.faces import Face, width
from planner.card.pdf.ink import Block, Path, beside, stack
from planner.card.pdf.scale import ACROSS, LEFT, Scale
from planner.card.pdf.sections.warning import warning
from planner.card.pdf.text import line, paragraph
from planner.values.card import Card
from planner.values.statement import Level, Notice


def notices(card: Card, scale: Scale) -> Block:
    """Cautions first."""
    cautions = [notice for notice in card.notices if notice.level is not Level.NOTE]
    notes = [notice for notice in card.notices if notice.level is Level.NOTE]
    return stack(
        (
            *(warning(_words(notice, scale), scale, LEFT, ACROSS) for notice in cautions),
            *(_note(_words(notice, scale), scale) for notice in notes),
        ),
        gap=scale.prose * 0.3,
    )


def _words(notice: Notice, scale: Scale) -> str:
    provenance = notice.provenance
    source = f": {provenance.source}" if scale.sources and provenance.source else ""
    return f"{notice.text} ({provenance.mark.value}{source})"


def _note(words: str, scale: Scale) -> Block:
    size = scale.prose
    label_x = LEFT + size * 1.6
    words_x = label_x + width("CAUTION", Face.BOLD, size) + size * 0.8
    dash = Path(points=((LEFT, size * 0.62), (LEFT + size * 1.1, size * 0.62)), line=size * 0.11)
    return beside(
        Block(height=size, marks=(dash,)),
        line("Note", Face.REGULAR, size, label_x),
        paragraph(words, Face.REGULAR, size, words_x, LEFT + ACROSS - words_x),
    )
