"""The two weights of the card's typeface: how wide words run, and which characters they can show."""

from __future__ import annotations

from enum import StrEnum
from functools import cache
from io import BytesIO
from pathlib import Path

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont


class Face(StrEnum):
    """A weight, by the name it is registered under."""

    REGULAR = "card-regular"
    BOLD = "card-bold"


FOLDER = Path(__file__).parent / "fonts"
FILES = {Face.REGULAR: "NotoSans-Regular-subset.ttf", Face.BOLD: "NotoSans-Bold-subset.ttf"}


@cache
def font(face: Face) -> TTFont:
    """The loaded face, registered with ReportLab.

    It is read into memory so that no path of this device can get into the page. Only the characters in use are
    embedded; ReportLab's own choice would put the whole of ASCII into every card.
    """
    data = BytesIO((FOLDER / FILES[face]).read_bytes())
    loaded = TTFont(face.value, data, asciiReadable=False)
    pdfmetrics.registerFont(loaded)
    return loaded


def width(words: str, face: Face, size: float) -> float:
    """How far ``words`` run on one line, in points."""
    return float(font(face).stringWidth(words, size))


def lacks(words: str) -> frozenset[str]:
    """The characters of ``words``, white space apart, that not both weights can show."""
    shown = [font(face).face.charToGlyph for face in Face]
    return frozenset(
        character
        for character in words
        if not character.isspace() and any(ord(character) not in face for face in shown)
    )
