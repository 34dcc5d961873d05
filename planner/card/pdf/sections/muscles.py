"""One row for each muscle, in operating order: eye, muscle, operation, millimetres, in that order of size."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.pdf.faces import Face, width
from planner.card.pdf.ink import NOTHING, Block, Path, beside, rule, stack
from planner.card.pdf.picture import drawn
from planner.card.pdf.scale import ACROSS, LEFT, Scale
from planner.card.pdf.text import line, paragraph
from planner.card.words import mm_words
from planner.values.card import Card, CardLine
from planner.values.option import Operation

EYE, MUSCLE, OPERATION, MM, LIMBUS = 31.0, 27.0, 24.0, 21.5, 13.0
NUMBER_ACROSS = 38.0
RULER_ACROSS, RULER_DOWN = 150.0, 14.0


def muscles(card: Card, scale: Scale) -> Block:
    """All rows, ruled off from each other."""
    who_across = _who_across(card, scale)
    parts = [
        part
        for number, each in enumerate(card.lines, 1)
        for part in (rule(LEFT, ACROSS, 0.75), _row(number, each, scale, who_across))
    ]
    return stack((*parts, rule(LEFT, ACROSS, 0.75)), gap=scale.gap * 0.35)


def _row(number: int, card_line: CardLine, scale: Scale, who_across: float) -> Block:
    left = LEFT + NUMBER_ACROSS
    right = left + who_across
    lead = scale.lead
    who = stack(
        (
            line(card_line.eye_words, Face.BOLD, EYE * lead, left),
            line(card_line.muscle_words, Face.REGULAR, MUSCLE * lead, left),
        )
    )
    what = stack(
        (
            _operation(card_line, lead, right),
            *(paragraph(words, Face.BOLD, LIMBUS * lead, right, LEFT + ACROSS - right) for words in _where(card_line)),
            paragraph(_measured(card_line), Face.REGULAR, scale.prose, right, LEFT + ACROSS - right),
            _changed(card_line, scale, right),
        )
    )
    return beside(_number(number, EYE * lead), who, what, _ruler(card_line, what, scale))


def _ruler(card_line: CardLine, beside_it: Block, scale: Scale) -> Block:
    """The distances to scale at the end of the row, where the words do not need the room."""
    across = RULER_ACROSS * scale.lead
    x = LEFT + ACROSS - across
    if card_line.ruler is None or max(mark.right for mark in beside_it.marks) > x - 6:
        return NOTHING
    return drawn(card_line.ruler, x, across).moved(RULER_DOWN * scale.lead)


def _who_across(card: Card, scale: Scale) -> float:
    """Room for the longest eye and muscle words of the card, so that its rows share their columns."""
    lead = scale.lead
    widths = (
        max(width(each.eye_words, Face.BOLD, EYE * lead), width(each.muscle_words, Face.REGULAR, MUSCLE * lead))
        for each in card.lines
    )
    return max(widths) + 24 * lead


def _number(number: int, eye_size: float) -> Block:
    figure, size, side = str(number), eye_size * 0.36, eye_size * 0.64
    top = eye_size * 0.6 - side / 2
    right, bottom = LEFT + side, top + side
    box = Path(points=((LEFT, top), (right, top), (right, bottom), (LEFT, bottom)), line=1.25, closed=True)
    x = LEFT + (side - width(figure, Face.BOLD, size)) / 2
    return beside(Block(height=bottom, marks=(box,)), line(figure, Face.BOLD, size, x).moved(top + size * 0.29))


def _operation(card_line: CardLine, lead: float, x: float) -> Block:
    if card_line.mm is None:
        return line(card_line.operation_words, Face.REGULAR, OPERATION * lead, x)
    words = f"{card_line.operation_words} "
    return beside(
        line(words, Face.REGULAR, OPERATION * lead, x),
        line(mm_words(card_line.mm), Face.BOLD, MM * lead, x + width(words, Face.REGULAR, OPERATION * lead)).moved(
            (OPERATION - MM) * lead * 0.96
        ),
    )


def _where(card_line: CardLine) -> Iterator[str]:
    """What is set with a ruler, or said where no ruler helps."""
    if card_line.limbus_mm is not None:
        yield f"{mm_words(card_line.limbus_mm)} from the limbus"
    if card_line.offset_words:
        yield card_line.offset_words
    if card_line.attachment_words:
        yield card_line.attachment_words


def _measured(card_line: CardLine) -> str:
    """What a caliper spans, which is set from the limbus too, before the distances from the insertion."""
    mm = card_line.caliper_mm
    caliper = "" if mm is None else f"straight caliper from the limbus {mm_words(mm)}"
    return "; ".join(words for words in (caliper, _insertion(card_line)) if words)


def _insertion(card_line: CardLine) -> str:
    if card_line.insertion_mm is None or card_line.mm is None:
        return ""
    insertion, mm = mm_words(card_line.insertion_mm), mm_words(card_line.mm)
    match card_line.operation:
        case Operation.RECESS:
            return f"insertion at {insertion}, moved back {mm}"
        case Operation.RESECT:
            return f"back at the insertion, shortened by {mm}"
    return f"insertion at {insertion}"


def _changed(card_line: CardLine, scale: Scale, x: float) -> Block:
    if not card_line.surgeon_changed or card_line.mm is None:
        return NOTHING
    table = "no figure" if card_line.table_mm is None else mm_words(card_line.table_mm)
    words = f"Changed by the surgeon: table {table}, surgeon {mm_words(card_line.mm)}"
    return paragraph(words, Face.BOLD, scale.prose, x, LEFT + ACROSS - x)
