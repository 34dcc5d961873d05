"""A day's list: rows in operating order with times, names, eyes and operation in words, then the kit."""

from __future__ import annotations

from planner.card.pdf.faces import Face
from planner.card.pdf.ink import NOTHING, Block, beside, rule, stack
from planner.card.pdf.scale import ACROSS, LEFT
from planner.card.pdf.text import line, paragraph
from planner.card.words import date_words, moment_words
from planner.paper.flow import Sheet
from planner.paper.sections.kit_lines import kit_blocks
from planner.paper.sections.parts import PROSE, foot, notice, unshown
from planner.values.day_list import DayList, ListRow
from planner.values.statement import Level

TIME_ACROSS, WORD_ACROSS = 74.0, 100.0


def page(listed: DayList) -> Sheet:
    """The list as blocks."""
    where = ", ".join(words for words in (listed.team, listed.place) if words)
    title = stack(
        (
            line(f"Operating list, {date_words(listed.on)}", Face.BOLD, 18, LEFT),
            paragraph(where, Face.BOLD, 12, LEFT, ACROSS),
        )
    )
    count = len(listed.rows)
    total = (
        f"{count} operation{'' if count == 1 else 's'}, {listed.starts_at} to {listed.ends_at}, "
        f"{listed.turnover_min} minutes between two."
    )
    return Sheet(
        head=stack((title, unshown(where), line(total, Face.REGULAR, PROSE, LEFT), rule(LEFT, ACROSS, 2)), gap=3),
        again=stack((title, rule(LEFT, ACROSS, 2)), gap=3),
        blocks=(*map(_row, listed.rows), *map(notice, listed.kit_notices), *kit_blocks(listed.kit, listed.spare_words)),
        foot=foot(
            listed.disclaimer,
            listed.engine_version,
            f"This clinic's practice: {listed.practice_words}" if listed.practice_words else "",
        ),
    )


def _row(row: ListRow) -> Block:
    x, across = LEFT + TIME_ACROSS, ACROSS - TIME_ACROSS - WORD_ACROSS
    when = stack(
        (
            line(f"{row.number}.  {row.starts_at.partition(' ')[0]}", Face.BOLD, 13, LEFT),
            line(f"to {row.ends_at}", Face.REGULAR, 9, LEFT),
            line(f"{row.duration_min} minutes", Face.REGULAR, 9, LEFT),
        )
    )
    who = stack(
        (
            paragraph(row.full_name or "Not on this device", Face.BOLD, 13, x, across),
            paragraph(_facts(row), Face.REGULAR, PROSE, x, across) if row.full_name else NOTHING,
            unshown(row.full_name + row.hospital_number + row.note + row.allergies),
            *(paragraph(words, Face.BOLD, 10.5, x, across) for words in row.operation),
            paragraph(_set_up(row), Face.REGULAR, PROSE, x, across) if row.anaesthesia_words else NOTHING,
            paragraph(f"Note: {row.note}", Face.REGULAR, PROSE, x, across) if row.note else NOTHING,
            *(notice(each, x) for each in row.notices if each.level is not Level.NOTE),
            *(notice(each, x) for each in row.notices if each.level is Level.NOTE),
        ),
        gap=1.5,
    )
    word = _eyes_and_word(row, LEFT + ACROSS - WORD_ACROSS + 4)
    return stack((beside(when, who, word), rule(LEFT, ACROSS, 0.75)), gap=4)


def _facts(row: ListRow) -> str:
    years = "" if row.age_years is None else f" ({row.age_years} years)"
    allergies = row.allergies or "not recorded: ask"
    return f"Born {date_words(row.born_on)}{years}, hospital number {row.hospital_number}. Allergies: {allergies}"


def _set_up(row: ListRow) -> str:
    from_when = f" (from {moment_words(row.adjust_from)})" if row.adjust_from else ""
    return f"{row.anaesthesia_words}. {row.magnification_words}. {row.adjusting_words}{from_when}."


def _eyes_and_word(row: ListRow, x: float) -> Block:
    if not row.check_word:
        return NOTHING
    return stack(
        (
            line(row.eyes_words, Face.BOLD, 14, x) if row.eyes_words else NOTHING,
            line("Check word", Face.REGULAR, 7.5, x),
            line(row.check_word, Face.BOLD, 11, x),
        )
    )
