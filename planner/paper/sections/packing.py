"""What several lists need together."""

from __future__ import annotations

from planner.card.pdf.faces import Face
from planner.card.pdf.ink import Block, rule, stack
from planner.card.pdf.scale import ACROSS, LEFT
from planner.card.pdf.text import line, paragraph
from planner.card.words import date_words
from planner.paper.flow import Sheet
from planner.paper.sections.kit_lines import kit_blocks
from planner.paper.sections.parts import foot, notice
from planner.values.kit import PackedDay, Packing


def page(packing: Packing) -> Sheet:
    """Days first, what is not counted, then the kit."""
    title = line("Packing list", Face.BOLD, 18, LEFT)
    return Sheet(
        head=stack((title, rule(LEFT, ACROSS, 2)), gap=3),
        again=stack((title, rule(LEFT, ACROSS, 2)), gap=3),
        blocks=(
            stack((_total(packing), *map(_day, packing.days)), gap=2),
            *map(notice, packing.notices),
            *kit_blocks(packing.kit, packing.spare_words),
        ),
        foot=foot(
            packing.disclaimer,
            packing.engine_version,
            f"This clinic's practice: {packing.practice_words}" if packing.practice_words else "",
        ),
    )


def _total(packing: Packing) -> Block:
    lists, count, left_out = len(packing.days), packing.operations, len(packing.not_counted)
    of = f"{count - left_out} of " if left_out else ""
    words = f"{of}{count} operation{'' if count == 1 else 's'} on {lists} list{'' if lists == 1 else 's'}"
    return line(words, Face.BOLD, 12, LEFT)


def _day(day: PackedDay) -> Block:
    where = ", ".join(words for words in (day.team, day.place) if words)
    return paragraph(f"{date_words(day.on)}: {where}, {day.operations}", Face.REGULAR, 10.5, LEFT, ACROSS)
