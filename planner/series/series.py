"""The series that come with the engine, read from their files once."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from functools import cache
from pathlib import Path
from typing import Annotated

from planner.anatomy import Muscle
from planner.codec import read
from planner.direction import Direction
from planner.limits import Length, Unique
from planner.provenance import Provenance
from planner.records.dose_table import Between, Deviation, Millimetres, OwnMaximum, Slug, TableOrigin
from planner.tables.column import Column, Row
from planner.tables.table import SHARE_OF_ROW
from planner.values.option import Operation
from planner.values.table_stamp import TableStamp

FOLDER = Path(__file__).parent
WHOLE = 1.0


class Eyes(StrEnum):
    """Whether a series moved a muscle of one eye or of both."""

    ONE = "one"
    BOTH = "both"

    @property
    def words(self) -> str:
        """How a column is headed in print."""
        return "one eye" if self is Eyes.ONE else "both eyes"


@dataclass(frozen=True, kw_only=True)
class SeriesRow:
    """One printed row; see :mod:`planner.series`."""

    from_pd: Deviation
    to_pd: Deviation | None = None
    mm: Millimetres
    up_to_mm: Millimetres | None = None
    corrects_pd: Deviation | None = None


@dataclass(frozen=True, kw_only=True)
class SeriesFile:
    """A series as it is written down, schema 1; ``words`` is its name in brackets behind an operation."""

    schema: int = 1
    id: Slug
    name: Annotated[str, Length(3, 80)]
    words: Annotated[str, Length(3, 40)]
    caution: Annotated[str, Length(10, 400)]
    direction: Direction
    muscle: Muscle
    operation: Operation
    eyes: Eyes
    between: Between
    origin: TableOrigin
    rows: Annotated[tuple[SeriesRow, ...], Length(1, 20)]
    after_recession_mm: Millimetres | None = None
    maxima: Annotated[tuple[OwnMaximum, ...], Length(0, 1), Unique(("muscle", "operation"))] = ()


@dataclass(frozen=True, kw_only=True)
class Series:
    """One series ready for use."""

    stamp: TableStamp
    words: str
    direction: Direction
    muscle: Muscle
    operation: Operation
    eyes: Eyes
    after_recession_mm: float | None
    column: Column
    maxima: Mapping[tuple[Muscle, Operation], OwnMaximum]

    @property
    def provenance(self) -> Provenance:
        """Where the figures come from."""
        return self.stamp.provenance


@cache
def series() -> tuple[Series, ...]:
    """All series, by id."""
    return tuple(_open(file) for file in sorted(FOLDER.glob("*.toml")))


def _open(file: Path) -> Series:
    written = read(SeriesFile, tomllib.loads(file.read_text(encoding="utf-8")))
    origin = written.origin
    return Series(
        stamp=TableStamp(
            id=written.id,
            name=written.name,
            provenance=Provenance(mark=origin.mark, source=f"{origin.publication}; {origin.place}"),
            caution=written.caution,
            validity=origin.validity,
        ),
        words=written.words,
        direction=written.direction,
        muscle=written.muscle,
        operation=written.operation,
        eyes=written.eyes,
        after_recession_mm=written.after_recession_mm,
        column=Column(
            heading=f"{written.operation} {written.muscle}, {written.eyes.words}",
            rows=tuple(map(_row, written.rows)),
            share=WHOLE if written.eyes is Eyes.ONE else SHARE_OF_ROW,
            is_banded=written.between is Between.BANDS,
        ),
        maxima={(each.muscle, each.operation): each for each in written.maxima},
    )


def _row(printed: SeriesRow) -> Row:
    last_pd = printed.from_pd if printed.to_pd is None else printed.to_pd
    up_to_mm = printed.mm if printed.up_to_mm is None else printed.up_to_mm
    if printed.corrects_pd is None:
        return Row(printed.from_pd, last_pd, printed.mm, up_to_mm, printed.from_pd, last_pd)
    return Row(printed.from_pd, last_pd, printed.mm, up_to_mm, printed.corrects_pd, printed.corrects_pd)
