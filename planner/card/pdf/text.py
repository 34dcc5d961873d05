"""Text set in lines: broken at spaces, inside a word only where the word alone is too wide. Nothing is ever cut off.

A figure keeps to its unit by a no-break space, which the painted page shows and gives back as a plain one.
"""

from __future__ import annotations

from planner.card.pdf.faces import Face, lacks, width
from planner.card.pdf.ink import Block, Words, stack

LEADING = 1.25
BASELINE = 0.96
"""The height of a line and its baseline below its top, as parts of the size: room for an accent on a capital."""

SHOWN_FOR_LACKING = "\N{REPLACEMENT CHARACTER}"


def showable(words: str) -> str:
    """``words`` with a visible sign for each character that the typeface lacks."""
    missing = lacks(words)
    return "".join(SHOWN_FOR_LACKING if character in missing else character for character in words)


def line(words: str, face: Face, size: float, x: float) -> Block:
    """One line."""
    mark = Words(x=x, y=size * BASELINE, words=showable(words), face=face, size=size)
    return Block(height=size * LEADING, marks=(mark,))


def paragraph(words: str, face: Face, size: float, x: float, across: float) -> Block:
    """Lines no wider than ``across``; a line break in ``words`` begins a new line."""
    return stack(line(each, face, size, x) for each in broken(words, face, size, across))


def broken(words: str, face: Face, size: float, across: float) -> list[str]:
    """The lines of ``words``."""
    return [
        part
        for each in words.splitlines()
        for part in _wrapped(showable(each).replace("\t", " ").split(" "), face, size, across)
    ]


def _wrapped(words: list[str], face: Face, size: float, across: float) -> list[str]:
    lines: list[str] = []
    current = ""
    for word in (piece for each in words if each for piece in _pieces(each, face, size, across)):
        longer = f"{current} {word}" if current else word
        if current and width(longer, face, size) > across:
            lines.append(current)
            current = word
        else:
            current = longer
    return [*lines, current] if current else lines


def _pieces(word: str, face: Face, size: float, across: float) -> list[str]:
    pieces = [""]
    for character in word:
        if pieces[-1] and width(pieces[-1] + character, face, size) > across:
            pieces.append("")
        pieces[-1] += character
    return pieces
