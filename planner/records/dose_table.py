"""A dose table as it is written down: the rows as printed, and where they come from."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.limits import IsoDate, Length, Pattern, Within
from planner.provenance import Mark

Millimetres = Annotated[float, Within(0.5, 15, "mm")]


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
    same muscle of both eyes; ``one``: recess and resect in one eye. A dash in print is a key left out.
    """

    deviation_pd: Annotated[float, Within(1, 150, "prism dioptres")]
    both_recess_mm: Millimetres | None = None
    both_resect_mm: Millimetres | None = None
    one_recess_mm: Millimetres | None = None
    one_resect_mm: Millimetres | None = None


@dataclass(frozen=True, kw_only=True)
class DoseTable:
    """Body of a dose table, schema 1. ``caution`` is what the source itself warns of, in our words."""

    schema: int = 1
    id: Annotated[str, Pattern(r"[a-z][a-z0-9]*(-[a-z0-9]+)*", "lower-case words joined by hyphens")]
    name: Annotated[str, Length(3, 80)]
    caution: Annotated[str, Length(10, 400)]
    origin: TableOrigin
    esotropia: Annotated[tuple[TableRow, ...], Length(2, 40)]
    exotropia: Annotated[tuple[TableRow, ...], Length(2, 40)]
