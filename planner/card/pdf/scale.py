"""The page and its steps of size: the first that lets everything fit on one page is taken."""

from __future__ import annotations

from dataclasses import dataclass

PAGE_WIDTH, PAGE_HEIGHT = 595.28, 841.89
"""A4 in points."""

MARGIN = 40.0
"""14 mm: what any office printer can reach."""

LEFT = MARGIN
ACROSS = PAGE_WIDTH - 2 * MARGIN
DEEP = PAGE_HEIGHT - 2 * MARGIN


@dataclass(frozen=True, kw_only=True)
class Scale:
    """How large things are.

    ``lead`` multiplies the sizes of what is read from afar: eye, muscle, operation, millimetres. ``prose`` is the size
    of running text in points. Where ``sources`` are left out, a statement keeps its mark and the screen has the source.
    ``picture`` is the size of the pictures, 0 where they are left out; where ``steps`` are, the page says so, too.
    Where ``note_lines`` is given, the surgeon's note ends there and says that it goes on.
    """

    lead: float
    prose: float
    gap: float
    sources: bool
    picture: float = 1.0
    steps: bool = True
    note_lines: int | None = None


SCALES = (
    Scale(lead=1.0, prose=10, gap=14, sources=True),
    Scale(lead=0.92, prose=9.5, gap=12, sources=True),
    Scale(lead=0.85, prose=9, gap=10, sources=True),
    Scale(lead=0.8, prose=9, gap=9, sources=False),
    Scale(lead=0.75, prose=8.5, gap=8, sources=False),
    Scale(lead=0.7, prose=8, gap=7, sources=False),
    Scale(lead=0.66, prose=8, gap=6, sources=False, picture=0.9),
    Scale(lead=0.62, prose=7.5, gap=6, sources=False, picture=0.85),
    Scale(lead=0.6, prose=7, gap=5, sources=False, picture=0.8),
    Scale(lead=0.75, prose=8.5, gap=8, sources=False, picture=0.9, steps=False),
    Scale(lead=0.66, prose=8, gap=6, sources=False, picture=0.8, steps=False),
    Scale(lead=0.6, prose=7, gap=5, sources=False, picture=0.75, steps=False),
    Scale(lead=0.6, prose=7, gap=5, sources=False, picture=0, steps=False),
    Scale(lead=0.6, prose=7, gap=5, sources=False, picture=0, steps=False, note_lines=6),
    Scale(lead=0.6, prose=7, gap=5, sources=False, picture=0, steps=False, note_lines=2),
)
"""From roomy to tight: sources go first, then size, then the steps, the pictures, the note.

The last is the smallest that can still be read: prose of 7 points, eye words of 18.
"""
