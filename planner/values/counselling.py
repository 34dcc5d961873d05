"""What a patient or parent is shown of a plan: sentences that can be translated, a picture, and people counted."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from planner.anatomy import Eye
from planner.values.picture import Mark, Picture
from planner.values.table_stamp import TableStamp


@dataclass(frozen=True, kw_only=True)
class Said:
    """A sentence to be translated where it is shown: English with ``{names}``, and what stands in their place.

    The values are figures as they are written; they hold no words, so that nothing but ``text`` is translated.
    """

    text: str
    values: Mapping[str, str]


@dataclass(frozen=True, kw_only=True)
class PlannedMuscle:
    """One muscle in plain words. ``number`` is its number in the picture, ``trade`` the line as surgeons say it."""

    number: int
    eye: Eye
    eye_words: Said
    muscle: Said
    done: tuple[Said, ...]
    trade: str


class Figure(StrEnum):
    """How one of a hundred small figures is drawn: told apart by shape, not by colour."""

    FULL = "full"
    BARRED = "barred"
    CROSSED = "crossed"
    OPEN = "open"


@dataclass(frozen=True, kw_only=True)
class IconGroup:
    """So many of the hundred, what they stand for, and one of them drawn for the legend."""

    figure: Figure
    count: int
    words: Said
    sample: tuple[Mark, ...]


@dataclass(frozen=True, kw_only=True)
class IconArray:
    """A hundred small figures in rows of ten; the counts of the groups add to a hundred."""

    groups: tuple[IconGroup, ...]
    width_mm: float
    height_mm: float
    marks: tuple[Mark, ...]


@dataclass(frozen=True, kw_only=True)
class Origin:
    """Where a figure comes from: its mark, to be translated, and the source as it is cited."""

    mark: Said
    source: str


@dataclass(frozen=True, kw_only=True)
class Passage:
    """Some sentences under a heading.

    ``headline`` is the one that matters most; ``array`` stands where there is a figure that a hundred people can show.
    """

    code: str
    heading: Said
    sentences: tuple[Said, ...]
    origin: Origin
    headline: Said | None = None
    array: IconArray | None = None


@dataclass(frozen=True, kw_only=True)
class CounsellingPage:
    """The whole page, for a plan before or after it is signed.

    ``expected`` is what the operation is to reach, ``days`` what comes when, ``risks`` what can go wrong, ``call`` when
    not to wait. The clinic's own word goes before all of it, which ``deferring`` says.
    """

    engine_version: str
    table: TableStamp
    picture: Picture
    picture_words: Said
    muscles: tuple[PlannedMuscle, ...]
    expected: tuple[Passage, ...]
    days: tuple[Passage, ...]
    risks: tuple[Passage, ...]
    call: Passage
    deferring: tuple[Said, ...]
