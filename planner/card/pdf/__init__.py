"""The card on paper: one A4 page, black on white, to be read at arm's length.

:func:`pdf` is the door. Inside, ``sections`` turn the card into blocks of marks (``ink``, ``text``), ``page`` takes
the roomiest ``scale`` at which they fit and refuses a card that fits at none, ``faces`` knows the typeface in
``fonts``, ``picture`` sets the plan's pictures, ``qr`` makes the code's modules, and ``paint`` puts the marks on paper.
Only ``faces``, ``qr`` and ``paint`` import ReportLab.

The bytes depend on the card alone: no clock, no compression, no path, no function that differs between C libraries.
"""

from planner.card.pdf.page import page
from planner.card.pdf.paint import paint
from planner.values.card import Card

__all__ = ["pdf"]


def pdf(card: Card) -> bytes:
    """The page as a PDF; :class:`planner.errors.Refused` with ``card_too_long`` or ``card_unreadable``."""
    return paint(page(card), title=f"Operation card {card.check_word}")
