"""A dose table ready for use: its columns by direction, form and operation."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from planner.anatomy import Muscle
from planner.direction import Direction
from planner.provenance import Provenance
from planner.records.dose_table import Between, DoseTable, OwnMaximum, PublishedOutcome, TableRow
from planner.tables.column import Column, Row, row
from planner.values.option import Operation
from planner.values.table_stamp import TableStamp

SHARE_OF_ROW = 0.5
"""A muscle done at the amount of a row corrects half of that row's deviation (common practice)."""


class Form(StrEnum):
    """What a printed column is for."""

    BOTH = "both"
    ONE = "one"

    @property
    def words(self) -> str:
        """How the column is headed in print."""
        return "both eyes" if self is Form.BOTH else "one eye"


@dataclass(frozen=True, kw_only=True)
class Table:
    """One dose table; ``columns`` holds those that it prints, ``maxima`` what it does beyond the conventional ones."""

    stamp: TableStamp
    columns: Mapping[tuple[Direction, Form, Operation], Column]
    maxima: Mapping[tuple[Muscle, Operation], OwnMaximum]
    outcomes: Mapping[Direction, PublishedOutcome]
    only_as_printed: bool
    one_eye_on_poorer: bool

    @property
    def provenance(self) -> Provenance:
        """Where the figures come from."""
        return self.stamp.provenance


COLUMN_FIELDS = {
    "both_recess_mm": (Form.BOTH, Operation.RECESS),
    "both_resect_mm": (Form.BOTH, Operation.RESECT),
    "one_recess_mm": (Form.ONE, Operation.RECESS),
    "one_resect_mm": (Form.ONE, Operation.RESECT),
}


def table_of(written: DoseTable, stamp: TableStamp) -> Table:
    """The table that ``written`` describes; it has been checked."""
    columns = {}
    for direction, rows in ((Direction.ESO, written.esotropia), (Direction.EXO, written.exotropia)):
        for field, (form, operation) in COLUMN_FIELDS.items():
            figures = _figures(rows, field)
            if figures:
                columns[direction, form, operation] = Column(
                    heading=f"{operation} {moved(direction, operation)}, {form.words}",
                    rows=figures,
                    share=SHARE_OF_ROW,
                    is_banded=written.between is Between.BANDS,
                )
    return Table(
        stamp=stamp,
        columns=columns,
        maxima={(each.muscle, each.operation): each for each in written.maxima},
        outcomes={each.direction: each for each in written.outcomes},
        only_as_printed=written.only_as_printed,
        one_eye_on_poorer=written.one_eye_on_poorer,
    )


def moved(direction: Direction, operation: Operation) -> Muscle:
    """The muscle that a column's operation moves."""
    return direction.recessed if operation is Operation.RECESS else direction.resected


def _figures(rows: tuple[TableRow, ...], field: str) -> tuple[Row, ...]:
    printed = ((each, getattr(each, field)) for each in rows)
    return tuple(row(each.deviation_pd, mm, each.to_pd) for each, mm in printed if mm is not None)


def stamp_of(written: DoseTable) -> TableStamp:
    """The stamp of a table that comes with the engine."""
    origin = written.origin
    provenance = Provenance(mark=origin.mark, source=f"{origin.publication}; {origin.place}")
    return TableStamp(
        id=written.id, name=written.name, provenance=provenance, caution=written.caution, validity=origin.validity
    )
