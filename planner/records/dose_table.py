"""A dose table as it is written down: the rows as printed, and where they come from."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

from planner.anatomy import Muscle
from planner.direction import Direction
from planner.limits import IsoDate, Length, Pattern, Unique, Within
from planner.provenance import Mark
from planner.values.option import Operation

Millimetres = Annotated[float, Within(0.5, 15, "mm")]
Deviation = Annotated[float, Within(1, 150, "prism dioptres")]

Slug = Annotated[
    str,
    Pattern(
        r"[a-z][a-z0-9]{0,13}(-[a-z0-9]{1,14}){0,3}",
        "one to four lower-case words of up to 14 characters, joined by hyphens",
    ),
]


class Between(StrEnum):
    """What holds between two rows."""

    LINE = "straight line"
    BANDS = "bands"


@dataclass(frozen=True, kw_only=True)
class TableOrigin:
    """Where the figures of a table come from and who copied them.

    ``place`` is the table, page or appendix; ``place_confirmed`` whether somebody has held the page beside the rows.
    ``validity`` says for which patients the figures are meant.
    """

    mark: Mark
    publication: Annotated[str, Length(10, 300)]
    place: Annotated[str, Length(4, 200)]
    place_confirmed: bool
    transcribed_by: Annotated[str, Length(4, 120)]
    transcribed_on: Annotated[str, IsoDate(2000)]
    checked_by: Annotated[str, Length(4, 120)]
    validity: Annotated[str, Length(10, 400)]


@dataclass(frozen=True, kw_only=True)
class TableRow:
    """One printed row: the deviation, prism dioptres, and mm per muscle.

    In esotropia the medial rectus is recessed and the lateral resected, in exotropia the other way round. ``both``: the
    same muscle of both eyes; ``one``: recess and resect in one eye. A dash in print is a key left out. ``to_pd`` is the
    upper end of a band.
    """

    deviation_pd: Deviation
    to_pd: Deviation | None = None
    both_recess_mm: Millimetres | None = None
    both_resect_mm: Millimetres | None = None
    one_recess_mm: Millimetres | None = None
    one_resect_mm: Millimetres | None = None


@dataclass(frozen=True, kw_only=True)
class OwnMaximum:
    """The most that the source itself did to a muscle, beyond what is conventionally done, and why that stands."""

    muscle: Muscle
    operation: Operation
    mm: Millimetres
    reason: Annotated[str, Length(10, 300)]


@dataclass(frozen=True, kw_only=True)
class PublishedOutcome:
    """Whom the source operated and how many ended well: less than ``within_pd`` from straight."""

    direction: Direction
    patients: Annotated[int, Within(1, 100000, "patients")]
    from_pd: Deviation
    success_percent: Annotated[float, Within(0, 100, "per cent")]
    within_pd: Annotated[float, Within(1, 30, "prism dioptres")]


@dataclass(frozen=True, kw_only=True)
class DoseTable:
    """Body of a ``dose_table`` record, and the form of the engine's own table files, schema 1.

    ``caution`` is what the source itself warns of, in our words. ``only_as_printed``: no operation on one, three or
    four muscles is derived from it. ``one_eye_on_poorer``: its one-eye columns are meant for the eye that sees less.
    """

    schema: int = 1
    id: Slug
    name: Annotated[str, Length(3, 80)]
    caution: Annotated[str, Length(10, 400)]
    origin: TableOrigin
    esotropia: Annotated[tuple[TableRow, ...], Length(2, 40)]
    exotropia: Annotated[tuple[TableRow, ...], Length(2, 40)]
    between: Between = Between.LINE
    only_as_printed: bool = False
    one_eye_on_poorer: bool = False
    maxima: Annotated[tuple[OwnMaximum, ...], Length(0, 4), Unique(("muscle", "operation"))] = ()
    outcomes: Annotated[tuple[PublishedOutcome, ...], Length(0, 2), Unique(("direction",))] = ()
