"""Sutures, steps, checks and pitfalls of each kind of work, once for all muscles that share it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from planner.card.pdf.faces import Face
from planner.card.pdf.ink import NOTHING, Block, beside, stack
from planner.card.pdf.scale import ACROSS, LEFT, Scale
from planner.card.pdf.text import line, paragraph
from planner.values.card import Card, CardLine
from planner.values.statement import Statement

Parts = tuple[tuple[str, str], ...]
NAME_ACROSS = 36.0


def steps(card: Card, scale: Scale) -> Block:
    """The card's lines by what is said of them; where they are not shown, that they are on the screen."""
    grouped = _grouped(card.lines)
    if not grouped:
        return NOTHING
    size = max(7.0, scale.prose - 1.5)
    if not scale.steps:
        words = "Sutures, steps, checks and pitfalls of each muscle: on the screen."
        return line(words, Face.REGULAR, size, LEFT)
    return stack(part for parts, numbers in grouped.items() for part in _part(parts, numbers, size))


def _grouped(lines: Iterable[CardLine]) -> dict[Parts, list[str]]:
    grouped: dict[Parts, list[str]] = {}
    for number, each in enumerate(lines, 1):
        parts = _parts(each)
        if parts:
            grouped.setdefault(parts, []).append(f"{number}")
    return grouped


def _part(parts: Parts, numbers: list[str], size: float) -> Iterator[Block]:
    yield line(f"Muscle {' and '.join(numbers)}", Face.BOLD, size, LEFT)
    for name, words in parts:
        yield beside(
            line(name, Face.BOLD, size, LEFT),
            paragraph(words, Face.REGULAR, size, LEFT + NAME_ACROSS, ACROSS - NAME_ACROSS),
        )


def _parts(each: CardLine) -> Parts:
    parts = (("Suture", each.sutures), ("Steps", each.steps), ("Check", each.checks), ("Beware", each.pitfalls))
    return tuple((name, _said(statements)) for name, statements in parts if statements)


def _said(statements: tuple[Statement, ...]) -> str:
    return " ".join(f"{each.text} ({each.provenance.mark})" for each in statements)
