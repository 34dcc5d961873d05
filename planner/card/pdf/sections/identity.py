"""Who: the name, two more identifiers, allergies, and a caution where the typeface cannot show a name."""

from __future__ import annotations

from planner.card.pdf.faces import Face, lacks
from planner.card.pdf.ink import NOTHING, Block, beside, rule, stack
from planner.card.pdf.scale import ACROSS, LEFT, Scale
from planner.card.pdf.sections.warning import warning
from planner.card.pdf.text import broken, line, paragraph
from planner.card.words import date_words
from planner.values.card import Card

NAME_SIZES = (22.0, 20.0, 18.0, 16.0)
SMALLEST_NAME = 14.0


def identity(card: Card, scale: Scale) -> Block:
    """The band that answers whose card this is."""
    size = _name_size(card, scale)
    third = ACROSS / 3
    return stack(
        (
            paragraph(card.full_name, Face.BOLD, size, LEFT, ACROSS),
            beside(
                _labelled("Born", date_words(card.born_on), LEFT, third),
                _labelled("Hospital number", card.hospital_number, LEFT + third, third),
                _labelled("Sex", card.sex, LEFT + 2 * third, third),
            ),
            _unshown(card, scale),
            rule(LEFT, ACROSS, 2),
        ),
        gap=scale.gap * 0.35,
    )


def _name_size(card: Card, scale: Scale) -> float:
    """The largest size at which the name stands on one line, or one at which it is well read on several."""
    sizes = [max(size * scale.lead, SMALLEST_NAME) for size in NAME_SIZES]
    one_line = (size for size in sizes if len(broken(card.full_name, Face.BOLD, size, ACROSS)) == 1)
    return next(one_line, sizes[-1])


def _labelled(label: str, words: str, x: float, across: float, size: float = 13.0) -> Block:
    return stack((line(label, Face.REGULAR, 7.5, x), paragraph(words, Face.BOLD, size, x, across - 8)))


def _unshown(card: Card, scale: Scale) -> Block:
    texts = {
        "the name": (card.full_name,),
        "the hospital number": (card.hospital_number,),
        "the allergies": (card.allergies,),
        "the surgeon's note": (card.plan_note,),
        "the signer's name": (card.signer_name,),
        "a notice": tuple(notice.text + notice.provenance.source for notice in card.notices),
    }
    lacking = [name for name, words in texts.items() if lacks("".join(words))]
    if not lacking:
        return NOTHING
    words = (
        f"This page's typeface lacks characters of {' and of '.join(lacking)}; each stands as "
        "\N{REPLACEMENT CHARACTER}. Read them on the screen and write them in by hand."
    )
    return warning(words, scale, LEFT, ACROSS)
