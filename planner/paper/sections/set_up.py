"""The set-up sheet: who, what is operated, then one row for each item with its choice, reasons and cautions."""

from __future__ import annotations

from planner.card.pdf.faces import Face
from planner.card.pdf.ink import NOTHING, Block, beside, rule, stack
from planner.card.pdf.scale import ACROSS, LEFT
from planner.card.pdf.text import line, paragraph
from planner.card.words import date_words, moment_words
from planner.paper.flow import Sheet, flow
from planner.paper.sections.parts import PROSE, foot, labelled, notice, person, said, unshown
from planner.values.set_up import SetUpItem, SetUpSheet

INDENT = 118.0


SIZES = (PROSE, 9.0, 8.5, 8.0)
"""Of running text: the largest with which everything stands on one page; where none does, two pages at the largest."""


def page(sheet: SetUpSheet) -> Sheet:
    """The sheet as blocks."""
    return next((made for made in (_set(sheet, size) for size in SIZES) if len(flow(made)) == 1), _set(sheet, SIZES[0]))


def _set(sheet: SetUpSheet, size: float) -> Sheet:
    who = person(sheet.full_name, sheet.born_on, sheet.hospital_number)
    return Sheet(
        head=stack((_title(sheet), who, rule(LEFT, ACROSS, 2)), gap=4),
        again=stack((_title(sheet), who, rule(LEFT, ACROSS, 2)), gap=4),
        blocks=(
            _operation(sheet),
            *(notice(each) for each in sheet.notices),
            _adjust_from(sheet),
            *(_item(each, size) for each in sheet.items),
        ),
        foot=foot(
            sheet.disclaimer,
            sheet.engine_version,
            "Where no source is named: common practice of the trade. Local protocol comes first.",
            f"This clinic's practice: {sheet.practice_words}" if sheet.practice_words else "",
        ),
        gap=size * 0.6,
    )


def _title(sheet: SetUpSheet) -> Block:
    half = ACROSS / 2
    return beside(
        line("Set-up for theatre", Face.BOLD, 13, LEFT),
        line(f"Check word {sheet.check_word}", Face.BOLD, 13, LEFT + half),
    )


def _operation(sheet: SetUpSheet) -> Block:
    third = ACROSS / 3
    return stack(
        (
            line(sheet.eyes_words, Face.BOLD, 24, LEFT) if sheet.eyes_words else NOTHING,
            *(line(words, Face.BOLD, 12, LEFT) for words in sheet.operation),
            beside(
                labelled("Day of operation", date_words(sheet.on), LEFT, third, size=11),
                labelled("Age on that day", _age(sheet.age_years), LEFT + third, third - 8, size=11),
                labelled("Allergies", sheet.allergies or "not recorded: ask", LEFT + 2 * third, third, size=11),
            ),
            unshown(sheet.allergies),
            rule(LEFT, ACROSS, 1),
        ),
        gap=3,
    )


def _age(years: int) -> str:
    return "under 1 year" if years == 0 else f"{years} year{'' if years == 1 else 's'}"


def _adjust_from(sheet: SetUpSheet) -> Block:
    if not sheet.adjust_from:
        return NOTHING
    return line(f"Adjust from {moment_words(sheet.adjust_from)} at the earliest", Face.BOLD, 13, LEFT)


def _item(each: SetUpItem, size: float) -> Block:
    small = size - 0.5
    x, across = LEFT + INDENT, ACROSS - INDENT
    what = stack(
        (
            paragraph(each.choice_words, Face.BOLD, 12, x, across),
            paragraph(each.practice_words, Face.BOLD, size, x, across) if each.practice_words else NOTHING,
            *(paragraph(said(statement), Face.REGULAR, size, x, across) for statement in each.reasons),
            *(notice(caution, x, size) for caution in each.cautions),
            *(
                paragraph(f"Would change it: {said(statement)}", Face.REGULAR, small, x, across)
                for statement in each.would_change
            ),
            paragraph(_never(each), Face.REGULAR, small, x, across) if _never(each) else NOTHING,
        ),
        gap=1.5,
    )
    return stack(
        (beside(paragraph(each.title, Face.BOLD, PROSE, LEFT, INDENT - 8).moved(2), what), rule(LEFT, ACROSS, 0.5)),
        gap=3,
    )


def _never(each: SetUpItem) -> str:
    refused = [way for way in each.alternatives if way.refused]
    return f"Refused: {', '.join(way.words.lower() for way in refused)}." if refused else ""
