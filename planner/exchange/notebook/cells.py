"""One cell to a JSON value that the codec then judges, or why it cannot be read at all."""

from __future__ import annotations

import re

_NUMBER = re.compile(r"[0-9]{1,6}([.,][0-9]{1,4})?", re.ASCII)
_DEVIATION = re.compile(
    r"(?P<sign>[+\-\u2212])?\s*(?P<size>[0-9]{1,6}([.,][0-9]{1,4})?)\s*(pd|\u0394)?\s*(?P<word>eso|exo)?",
    re.ASCII | re.IGNORECASE,
)
ANSWERS = {"yes": True, "no": False}


class Unreadable(ValueError):
    """The cell is not of its form; ``allowed`` says what would be."""

    def __init__(self, text: str, allowed: str) -> None:
        super().__init__(text)
        self.text = text
        self.allowed = allowed


def number(cell: str) -> float:
    """A figure without a sign; a comma does for the point."""
    if not _NUMBER.fullmatch(cell):
        raise Unreadable("This is not a figure.", "a figure such as 5 or 4.5")
    return float(cell.replace(",", "."))


def whole(cell: str) -> float:
    """A whole number without a sign."""
    if not (cell.isascii() and cell.isdigit() and len(cell) <= 6):  # noqa: PLR2004 -- far beyond every limit
        raise Unreadable("This is not a whole number.", "a whole number such as 45")
    return int(cell)


def deviation(cell: str) -> float:
    """Eso +, exo -. A figure that says neither is refused: a wrong sign turns a result round."""
    allowed = "+40, 40 eso, -30, 30 exo, or 0"
    found = _DEVIATION.fullmatch(cell)
    if not found:
        raise Unreadable("This is not a deviation.", allowed)
    size = float(found["size"].replace(",", "."))
    sign, word = found["sign"], (found["word"] or "").lower()
    if size == 0:
        return 0.0
    if not sign and not word:
        raise Unreadable("This does not say whether it is eso or exo.", allowed)
    if sign and word and (sign == "+") != (word == "eso"):
        raise Unreadable("Sign and word contradict each other.", allowed)
    return size if word == "eso" or (not word and sign == "+") else -size


def answer(cell: str) -> bool:
    """Yes or no."""
    if cell.lower() not in ANSWERS:
        raise Unreadable("This is neither yes nor no.", "yes, no")
    return ANSWERS[cell.lower()]


def words(cell: str) -> str:
    """Text as it stands."""
    return cell
