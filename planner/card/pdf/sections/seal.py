"""The check word, who signed and when, where the figures come from; and the code beside them all."""

from __future__ import annotations

from planner.card.pdf.faces import Face
from planner.card.pdf.ink import Block, beside, rule, stack
from planner.card.pdf.scale import ACROSS, LEFT, Scale
from planner.card.pdf.sections.code import SIDE, code
from planner.card.pdf.sections.origin import origin
from planner.card.pdf.text import line, paragraph
from planner.card.words import date_words, moment_words
from planner.values.card import Card

GAP = 12.0
LEAST_NAME = 10.0
"""Points, for a signer's name on a crowded page."""


def seal(card: Card, scale: Scale) -> Block:
    """Two columns and the code under a thick rule."""
    across = ACROSS - SIDE - GAP
    half = across / 2
    right = LEFT + half
    check = stack(
        (
            line("Check word", Face.REGULAR, 7.5, LEFT),
            line(card.check_word, Face.BOLD, 24, LEFT),
            paragraph(
                "The same on phone, tablet and paper, or this is not the plan.", Face.REGULAR, 7.5, LEFT, half - 8
            ),
        )
    )
    signed = stack(
        (
            line("Signed by", Face.REGULAR, 7.5, right),
            paragraph(card.signer_name, Face.BOLD, max(LEAST_NAME, 13 * scale.lead), right, half),
            line(moment_words(card.signed_at), Face.REGULAR, 9.5, right),
            line(f"Examined {date_words(card.examined_on)}", Face.REGULAR, 9.5, right),
        )
    )
    words = stack((beside(check, signed), origin(card, scale, across)), gap=scale.gap * 0.5)
    whole = beside(words, code(card, scale, LEFT + ACROSS - SIDE))
    return stack((rule(LEFT, ACROSS, 2), whole), gap=scale.gap * 0.35)
