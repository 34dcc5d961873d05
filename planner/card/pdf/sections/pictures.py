"""Both eyes, once as they are faced and once as the surgeon at the head of the table sees them."""

from __future__ import annotations

from planner.card.pdf.faces import Face
from planner.card.pdf.ink import NOTHING, Block, beside, stack
from planner.card.pdf.picture import drawn
from planner.card.pdf.scale import ACROSS, LEFT, Scale
from planner.card.pdf.text import line
from planner.values.card import Card

GAP = 14.0


def pictures(card: Card, scale: Scale) -> Block:
    """Side by side, each under its own words; words alone where the page has no room."""
    if not card.pictures:
        return NOTHING
    if not scale.picture:
        return line("No room for the pictures: see them on the screen.", Face.BOLD, scale.prose, LEFT)
    share = (ACROSS - GAP * (len(card.pictures) - 1)) / len(card.pictures)
    across = share * scale.picture
    return beside(
        *(
            stack(
                (
                    line(picture.title, Face.BOLD, scale.prose, LEFT + number * (share + GAP)),
                    drawn(picture, LEFT + number * (share + GAP), across),
                ),
                gap=2,
            )
            for number, picture in enumerate(card.pictures)
        )
    )
