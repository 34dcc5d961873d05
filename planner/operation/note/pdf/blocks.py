"""The note as blocks, in the order in which it is read: who, what, how it differs, what went wrong, what follows."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from planner.card.pdf.faces import Face, lacks
from planner.card.pdf.ink import NOTHING, Block, beside, rule, stack
from planner.card.pdf.scale import ACROSS, LEFT
from planner.card.pdf.text import broken, line, paragraph
from planner.card.words import date_words
from planner.operation.note.pdf.sign import sign
from planner.paper.flow import Sheet
from planner.values.operation import NoteComplication, NoteLine, OperationNote
from planner.values.statement import Level

PROSE = 10.0
SMALL = 8.0
LEAD = 15.0
THIRD = ACROSS / 3
TOGETHER = 12
"""Lines of a long text that are not parted."""
SIGNS = {Level.STOP: "STOP", Level.CAUTION: "CAUTION", Level.NOTE: "NOTE"}


def page(note: OperationNote) -> Sheet:
    """The whole note; every page after the first names the patient again."""
    return Sheet(head=_heading(note), again=_again(note), blocks=tuple(_blocks(note)), foot=_foot(note))


def _blocks(note: OperationNote) -> Iterator[Block]:
    """Empty ones take no room."""
    yield _unshown(note)
    yield from map(_muscle, note.lines)
    for notice in note.notices:
        words = f"{notice.text} ({notice.provenance.mark}: {notice.provenance.source})"
        yield sign(SIGNS[notice.level], words, PROSE, LEFT, ACROSS)
    yield from _complications(note.complications)
    yield from _section("What the engine expects", note.effect_words)
    yield from _section(
        "Adjustable suture", (*([note.window_words] if note.window_words else []), *note.adjustment_words)
    )
    yield from _section("Note", note.note.splitlines())
    yield _origin(note)


def _heading(note: OperationNote) -> Block:
    return stack(
        (
            beside(
                line("Operation note", Face.BOLD, LEAD, LEFT),
                line(date_words(note.operated_on), Face.BOLD, LEAD, LEFT + 2 * THIRD),
            ),
            paragraph(note.full_name, Face.BOLD, 20.0, LEFT, ACROSS),
            beside(
                _labelled("Born", date_words(note.born_on), LEFT),
                _labelled("Hospital number", note.hospital_number, LEFT + THIRD),
                _labelled("Sex", note.sex, LEFT + 2 * THIRD),
            ),
            beside(
                _labelled("Surgeon", note.surgeon_name, LEFT),
                _labelled("Anaesthesia", note.anaesthesia or "not recorded", LEFT + THIRD),
                _labelled("Allergies", note.allergies or "not recorded", LEFT + 2 * THIRD),
            ),
            _labelled("Times", note.times_words, LEFT, ACROSS) if note.times_words else NOTHING,
            rule(LEFT, ACROSS, 2),
            line(note.title, Face.BOLD, 22.0, LEFT),
        ),
        gap=5,
    )


def _again(note: OperationNote) -> Block:
    words = f"{note.full_name}: operation note, {date_words(note.operated_on)}"
    return stack((paragraph(words, Face.BOLD, 12.0, LEFT, ACROSS), rule(LEFT, ACROSS, 1)), gap=3)


def _foot(note: OperationNote) -> Block:
    words = f"{note.full_name}, {note.hospital_number}, {note.check_word}"
    return line(broken(words, Face.REGULAR, SMALL, ACROSS * 0.8)[0], Face.REGULAR, SMALL, LEFT).moved(2)


def _labelled(label: str, words: str, x: float, across: float = THIRD) -> Block:
    return stack((line(label, Face.REGULAR, 7.5, x), paragraph(words, Face.BOLD, 11.0, x, across - 8)))


def _muscle(each: NoteLine) -> Block:
    """Planned and done side by side; a difference is written out, not only seen."""
    where = f"{each.eye_words}, {each.muscle_words}"
    half = ACROSS / 2
    changed = (
        sign("CHANGED", f"Reason: {each.reason or 'none given'}", PROSE, LEFT, ACROSS) if each.differs else NOTHING
    )
    reason = NOTHING if each.differs or not each.reason else _plain(f"Reason: {each.reason}")
    return stack(
        (
            line(where, Face.BOLD, LEAD, LEFT),
            beside(
                _labelled("Planned", each.planned_words, LEFT, half),
                _labelled("Done", each.done_words, LEFT + half, half),
            ),
            changed,
            reason,
            _plain(_sentence(each.found_words)),
            _plain(_sentence(each.material_words)),
            _plain(_sentence(each.adjusted_words)),
            rule(LEFT, ACROSS, 0.6),
        ),
        gap=2.5,
    )


def _complications(complications: Iterable[NoteComplication]) -> Iterator[Block]:
    found = tuple(complications)
    yield line("Complications", Face.BOLD, 12.0, LEFT)
    if not found:
        yield _plain("None recorded.")
    for each in found:
        answer = f" Done about it: {each.answer}" if each.answer else ""
        said = f" {each.note}" if each.note else ""
        yield sign("COMPLICATION", f"{each.words}.{said}{answer}", PROSE, LEFT, ACROSS)


def _section(title: str, sentences: Iterable[str]) -> Iterator[Block]:
    """The title stays with what follows it; a long text goes on over pages, a few lines at a time."""
    lines = [words for each in sentences for words in broken(each, Face.REGULAR, PROSE, ACROSS)]
    for start in range(0, len(lines), TOGETHER):
        head = [line(title, Face.BOLD, 12.0, LEFT)] if start == 0 else []
        yield stack((*head, *(line(words, Face.REGULAR, PROSE, LEFT) for words in lines[start : start + TOGETHER])))


def _plain(words: str) -> Block:
    return paragraph(words, Face.REGULAR, PROSE, LEFT, ACROSS) if words else NOTHING


def _sentence(words: str) -> str:
    return f"{words[:1].upper()}{words[1:]}." if words else ""


def _origin(note: OperationNote) -> Block:
    return stack(
        (
            rule(LEFT, ACROSS, 0.6),
            paragraph(f"{note.plan_words} Check word {note.check_word}.", Face.REGULAR, SMALL, LEFT, ACROSS),
            paragraph(note.disclaimer, Face.BOLD, SMALL, LEFT, ACROSS),
        ),
        gap=2,
    )


def _unshown(note: OperationNote) -> Block:
    texts = (
        *(note.full_name, note.hospital_number, note.allergies, note.surgeon_name, note.note),
        *note.adjustment_words,
        *(each.reason for each in note.lines),
        *(each.note + each.answer for each in note.complications),
    )
    if not lacks("".join(texts)):
        return NOTHING
    words = "This page's typeface lacks some characters; each stands as \N{REPLACEMENT CHARACTER}. Read on the screen."
    return sign("CAUTION", words, PROSE, LEFT, ACROSS)
