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
    """Letters are set side by side without kerning, so the width of a line is the sum of its words' and spaces'."""
    space = width(" ", face, size)
    lines: list[list[str]] = []
    end = across
    for word in (piece for each in words if each for piece in _pieces(each, face, size, across)):
        word_across = width(word, face, size)
        if end + space + word_across > across:
            lines.append([word])
            end = word_across
        else:
            lines[-1].append(word)
            end += space + word_across
    return [" ".join(each) for each in lines]


def _pieces(word: str, face: Face, size: float, across: float) -> list[str]:
    if width(word, face, size) <= across:
        return [word]
    pieces = [""]
    for character in word:
        if pieces[-1] and width(pieces[-1] + character, face, size) > across:
            pieces.append("")
        pieces[-1] += character
    return pieces
