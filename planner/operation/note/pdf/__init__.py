"""The operation note on paper: A4 pages, black on white, drawn with the card's faces and laid out like other sheets.

:func:`pdf` is the door. ``blocks`` turn the note into blocks of marks, ``sign`` frames a word; every page names the
patient and the check word. The bytes depend on the note alone.
"""

from planner.card.pdf.paint import paint_pages
from planner.operation.note.pdf.blocks import page
from planner.paper.flow import flow
from planner.values.operation import OperationNote

__all__ = ["pdf"]


def pdf(note: OperationNote) -> bytes:
    """The pages as a PDF."""
    return paint_pages(flow(page(note)), title=f"Operation note {note.check_word}")
