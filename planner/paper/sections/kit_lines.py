"""The kit as a list to tick, under its headings."""

from __future__ import annotations

from itertools import groupby

from planner.card.pdf.faces import Face, width
from planner.card.pdf.ink import NOTHING, Block, beside, stack
from planner.card.pdf.scale import ACROSS, LEFT
from planner.card.pdf.text import line
from planner.paper.sections.parts import SMALL, ticked
from planner.values.kit import KitLine

COUNT_ACROSS = 150.0


def kit_blocks(lines: tuple[KitLine, ...], spare_words: str) -> tuple[Block, ...]:
    """A heading, one block for each group, the spare rule."""
    if not lines:
        return ()
    groups = groupby(lines, key=lambda each: each.group)
    return (
        line("Kit", Face.BOLD, 14, LEFT),
        *(
            stack((line(group.value.capitalize(), Face.BOLD, 10, LEFT), *map(_line, each)), gap=2)
            for group, each in groups
        ),
        line(spare_words, Face.REGULAR, SMALL, LEFT),
    )


def _line(each: KitLine) -> Block:
    count = f"{each.total}"
    spare = f"  ({each.used} + {each.spare} spare)" if each.spare else ""
    x = LEFT + ACROSS - COUNT_ACROSS
    return beside(
        stack(
            (
                ticked(each.words, Face.REGULAR, 10, LEFT, ACROSS - COUNT_ACROSS - 10),
                line(each.why, Face.REGULAR, SMALL, LEFT + 16),
            )
        ),
        line(count, Face.BOLD, 12, x),
        line(spare, Face.REGULAR, 9, x + width(count, Face.BOLD, 12)).moved(2.4) if spare else NOTHING,
    )
