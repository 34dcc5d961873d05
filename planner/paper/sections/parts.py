"""What the sheets share: who a patient is, a warning or note, a labelled column, the foot."""

from __future__ import annotations

from dataclasses import replace

from planner.card.pdf.faces import Face, lacks, width
from planner.card.pdf.ink import NOTHING, Block, Path, beside, rule, stack
from planner.card.pdf.scale import ACROSS, LEFT, Scale
from planner.card.pdf.sections.warning import warning
from planner.card.pdf.text import line, paragraph
from planner.card.words import date_words
from planner.provenance import Mark
from planner.values.statement import Level, Notice, Statement

PROSE = 9.5
SMALL = 8.0
SCALE = Scale(lead=1.0, prose=PROSE, gap=9, sources=True)


def person(full_name: str, born_on: str, hospital_number: str, *, size: float = 18.0) -> Block:
    """The name, the birth date and the number."""
    facts = f"Born {date_words(born_on)}, hospital number {hospital_number}"
    return stack(
        (
            paragraph(full_name, Face.BOLD, size, LEFT, ACROSS),
            paragraph(facts, Face.REGULAR, 11, LEFT, ACROSS),
            unshown(full_name + hospital_number),
        ),
        gap=2,
    )


def unshown(words: str) -> Block:
    """A caution where the typeface cannot show what was entered."""
    if not lacks(words):
        return NOTHING
    text = "This page's typeface lacks some characters of what was entered. Read them on the screen, write them in."
    return warning(text, SCALE, LEFT, ACROSS)


def notice(each: Notice, x: float = LEFT, size: float = PROSE) -> Block:
    """A stop or a caution with its sign, a note in plain."""
    across = LEFT + ACROSS - x
    if each.level is Level.NOTE:
        return paragraph(f"Note: {said(each)}", Face.REGULAR, size, x, across)
    if each.level is Level.STOP:
        return stop(said(each), size, x, across)
    return warning(said(each), replace(SCALE, prose=size), x, across)


def stop(words: str, size: float, x: float, across: float) -> Block:
    """A framed word, and the sentence in bold beside it: a stop differs from a caution by shape and word."""
    pad = size * 0.45
    right = x + 2 * pad + width("STOP", Face.BOLD, size)
    bottom = size * 1.35
    frame = Path(points=((x, 0), (right, 0), (right, bottom), (x, bottom)), line=1.6, closed=True)
    words_x = right + size * 0.8
    return beside(
        Block(height=bottom, marks=(frame,)),
        line("STOP", Face.BOLD, size, x + pad).moved(size * 0.1),
        paragraph(words, Face.BOLD, size, words_x, across - (words_x - x)).moved(size * 0.1),
    )


def said(each: Statement) -> str:
    """The sentence, with its source where that is more than common practice or a rule of the house."""
    plain = each.provenance.mark in (Mark.COMMON_PRACTICE, Mark.HOUSE_RULE)
    return each.text if plain else f"{each.text} {source(each)}"


def source(each: Statement) -> str:
    """The mark of a statement and where it is from."""
    provenance = each.provenance
    return f"({provenance.mark.value}{f': {provenance.source}' if provenance.source else ''})"


def labelled(label: str, words: str, x: float, across: float, *, size: float = PROSE) -> Block:
    """A small label over its words."""
    return stack((line(label, Face.REGULAR, 7.5, x), paragraph(words, Face.BOLD, size, x, across)))


def ticked(words: str, face: Face, size: float, x: float, across: float) -> Block:
    """Words beside an empty box to tick."""
    side, top = size * 0.8, size * 0.22
    box = Path(points=((x, top), (x + side, top), (x + side, top + side), (x, top + side)), line=0.9, closed=True)
    indent = side + width("  ", face, size)
    return beside(Block(height=size, marks=(box,)), paragraph(words, face, size, x + indent, across - indent))


def foot(disclaimer: str, engine_version: str, *others: str) -> Block:
    """Small print under a line; the page's number stands on its first line at the right."""
    said = (f"Primary Position, engine {engine_version}.", *others)
    return stack(
        (
            rule(LEFT, ACROSS, 1),
            *(paragraph(words, Face.REGULAR, SMALL, LEFT, ACROSS - 70) for words in said if words),
            paragraph(disclaimer, Face.BOLD, SMALL, LEFT, ACROSS),
        ),
        gap=2,
    )
