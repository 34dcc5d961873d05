"""An audit: every group in a line, then each in full with its charts, then how everything was counted."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.pdf.faces import Face
from planner.card.pdf.ink import NOTHING, Block, beside, rule, stack
from planner.card.pdf.picture import drawn
from planner.card.pdf.scale import ACROSS, LEFT
from planner.card.pdf.text import line, paragraph
from planner.card.words import date_words
from planner.paper.flow import Sheet
from planner.paper.sections.parts import PROSE, foot, labelled, notice, source, unshown
from planner.values.audit import Audit, Charted, Figures, GroupAudit, GroupLine, Judged

CHART_ACROSS = 250.0
GAP = 18.0
SMALL = 7.5
FIRST_COLUMN = 1.6
"""How much wider the first column of a table is than the others."""


def page(audit: Audit, clinic: str, on: str | None) -> Sheet:
    """The audit as blocks."""
    title = stack(
        (
            line(f"Results: {audit.by_words.lower()}", Face.BOLD, 18, LEFT),
            paragraph(", ".join(filter(None, (clinic, date_words(on) if on else ""))), Face.BOLD, 12, LEFT, ACROSS),
        )
    )
    counted = f"{audit.window_words}. {audit.cases} operations. Intervals are exact and of 95 %."
    return Sheet(
        head=stack((title, unshown(clinic), line(counted, Face.REGULAR, PROSE, LEFT), rule(LEFT, ACROSS, 2)), gap=3),
        again=stack((title, rule(LEFT, ACROSS, 2)), gap=3),
        blocks=(
            *(notice(each) for each in audit.notices),
            *map(_line, audit.lines if len(audit.lines) > 1 else ()),
            *(block for group in audit.groups for block in _group(group)),
            *_rules(audit),
        ),
        foot=foot(audit.disclaimer, audit.engine_version),
    )


def _line(group: GroupLine) -> Block:
    few = ", a small number" if group.few else ""
    return beside(
        paragraph(group.words, Face.BOLD, PROSE, LEFT, ACROSS * 0.45),
        line(f"{group.cases} operated{few}", Face.REGULAR, PROSE, LEFT + ACROSS * 0.5),
        line(f"within 10 Δ: {group.success_words}", Face.REGULAR, PROSE, LEFT + ACROSS * 0.74),
    )


def _group(group: GroupAudit) -> Iterator[Block]:
    yield stack(
        (
            rule(LEFT, ACROSS, 1),
            paragraph(group.words, Face.BOLD, 15, LEFT, ACROSS),
            unshown(group.words),
            *(notice(each) for each in group.notices),
        ),
        gap=4,
    )
    half = (ACROSS - GAP) / 2
    numbers = [(LEFT + (half + GAP) * (place % 2), told) for place, told in enumerate(group.numbers)]
    yield stack(
        (
            beside(
                *(
                    labelled(f"{told.label}{f' ({told.note})' if told.note else ''}", told.words, x, half)
                    for x, told in numbers[start : start + 2]
                )
            )
            for start in range(0, len(numbers), 2)
        ),
        gap=4,
    )
    yield stack((line("Success by each definition", Face.BOLD, 11, LEFT), *map(_judged, group.judged)), gap=4)
    yield beside(
        *(_figures(figures, LEFT + (half + GAP) * place, half, titled=True) for place, figures in enumerate(group.mix))
    )
    yield from map(_charted, group.charts)


def _judged(each: Judged) -> Block:
    return stack(
        (
            beside(
                line(each.share_words, Face.BOLD, 13, LEFT),
                line(each.interval_words, Face.REGULAR, PROSE, LEFT + 46).moved(3),
                stack(
                    (
                        paragraph(f"{each.definition} ({_mark(each)})", Face.REGULAR, 8.5, LEFT + 120, ACROSS - 120),
                        paragraph(
                            ". ".join(filter(None, (each.counts_words, each.extremes))),
                            Face.REGULAR,
                            8.5,
                            LEFT + 120,
                            ACROSS - 120,
                        ),
                    )
                ),
            ),
        )
    )


def _mark(each: Judged) -> str:
    return ": ".join(filter(None, (each.provenance.mark.value, each.provenance.source)))


def _charted(each: Charted) -> Block:
    """The chart, and beside it what it says and its figures."""
    x = LEFT + CHART_ACROSS + GAP
    across = ACROSS - CHART_ACROSS - GAP
    words = stack(
        (
            *(paragraph(words, Face.REGULAR, 8.5, x, across) for words in each.says),
            _figures(each.figures, x, across, titled=False),
        ),
        gap=3,
    )
    picture = drawn(each.picture, LEFT, CHART_ACROSS) if each.picture else NOTHING
    return stack((line(each.title, Face.BOLD, 11, LEFT), beside(picture, words)), gap=3)


def _figures(figures: Figures, x: float, across: float, *, titled: bool) -> Block:
    if not figures.rows:
        return NOTHING
    share = across / (FIRST_COLUMN + len(figures.columns) - 1)
    places = [x, *(x + share * (FIRST_COLUMN + number) for number in range(len(figures.columns) - 1))]
    wide = [share * FIRST_COLUMN - 4, *(share - 4 for _ in figures.columns[1:])]
    heads = ("", *figures.columns[1:]) if titled else figures.columns
    rows = ((heads, Face.BOLD), *((row, Face.REGULAR) for row in figures.rows))
    return stack(
        (
            line(figures.title, Face.BOLD, 11, x) if titled else NOTHING,
            *(
                beside(
                    *(
                        paragraph(cell, face, SMALL, place, room)
                        for cell, place, room in zip(row, places, wide, strict=True)
                        if cell
                    )
                )
                for row, face in rows
            ),
        ),
        gap=1.5,
    )


def _rules(audit: Audit) -> Iterator[Block]:
    yield stack((rule(LEFT, ACROSS, 1), line("How this was counted", Face.BOLD, 11, LEFT)), gap=3)
    for each in audit.rules:
        yield paragraph(f"{each.text} {source(each)}", Face.REGULAR, 8.5, LEFT, ACROSS)
