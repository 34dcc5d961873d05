"""Blocks on as many pages as they need; none is parted, and every page says whose it is and how many there are."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from planner.card.pdf.faces import Face, width
from planner.card.pdf.ink import Block, Mark, beside, stack
from planner.card.pdf.scale import ACROSS, DEEP, LEFT, MARGIN
from planner.card.pdf.text import line

GAP = 9.0
NUMBER_SIZE = 9.0


@dataclass(frozen=True, kw_only=True)
class Sheet:
    """What is printed: ``head`` on the first page, ``again`` on those after it, ``foot`` on all."""

    head: Block
    again: Block
    blocks: tuple[Block, ...]
    foot: Block
    gap: float = GAP


def flow(sheet: Sheet) -> tuple[tuple[Mark, ...], ...]:
    """The marks of each page. A block deeper than a page stands on a page of its own."""
    pages: list[list[Block]] = [[sheet.head]]
    for block in sheet.blocks:
        if not block.height:
            continue
        if stack([*pages[-1], block], gap=sheet.gap).height > _room(sheet) and len(pages[-1]) > 1:
            pages.append([sheet.again])
        pages[-1].append(block)
    return tuple(_page(sheet, blocks, number, len(pages)) for number, blocks in enumerate(pages, start=1))


def _room(sheet: Sheet) -> float:
    return DEEP - sheet.gap - sheet.foot.height


def _page(sheet: Sheet, blocks: Sequence[Block], number: int, count: int) -> tuple[Mark, ...]:
    foot = beside(sheet.foot, _number(number, count))
    return stack(blocks, gap=sheet.gap).moved(MARGIN).marks + foot.moved(MARGIN + DEEP - foot.height).marks


def _number(number: int, count: int) -> Block:
    words = f"Page {number} of {count}"
    return line(words, Face.REGULAR, NUMBER_SIZE, LEFT + ACROSS - width(words, Face.REGULAR, NUMBER_SIZE)).moved(2)
