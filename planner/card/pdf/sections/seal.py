"""The check word, who signed, and when."""

from __future__ import annotations

from planner.card.pdf.faces import Face
from planner.card.pdf.ink import Block, beside, rule, stack
from planner.card.pdf.scale import ACROSS, LEFT, Scale
from planner.card.pdf.text import line, paragraph
from planner.card.words import date_words, moment_words
from planner.values.card import Card


def seal(card: Card, scale: Scale) -> Block:
    """Two columns under a thick rule."""
    half = ACROSS / 2
    right = LEFT + half
    check = stack(
        (
            line("Check word", Face.REGULAR, 7.5, LEFT),
            line(card.check_word, Face.BOLD, 26, LEFT),
            line("The same on phone, tablet and paper, or this is not the plan.", Face.REGULAR, 7.5, LEFT),
        )
    )
    signed = stack(
        (
            line("Signed by", Face.REGULAR, 7.5, right),
            paragraph(card.signer_name, Face.BOLD, 13, right, half),
            line(moment_words(card.signed_at), Face.REGULAR, 9.5, right),
            line(f"Examined {date_words(card.examined_on)}", Face.REGULAR, 9.5, right),
        )
    )
    return stack((rule(LEFT, ACROSS, 2), beside(check, signed)), gap=scale.gap * 0.35)
