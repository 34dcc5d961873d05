"""A dose table ready for use: its columns by direction, form and operation."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from planner.direction import Direction
from planner.provenance import Provenance
from planner.records.dose_table import DoseTable, TableRow
from planner.values.option import Operation
from planner.values.table_stamp import TableStamp


class Form(StrEnum):
    """What a printed column is for."""

    BOTH = "both"
    ONE = "one"

    @property
    def words(self) -> str:
        """How the column is headed in print."""
        return "both eyes" if self is Form.BOTH else "one eye"


@dataclass(frozen=True, kw_only=True)
class Column:
    """``rows`` are (deviation in prism dioptres, mm per muscle), both rising; ``heading`` says what is done."""

    heading: str
    rows: tuple[tuple[float, float], ...]

    @property
    def first_pd(self) -> float:
        """The smallest deviation that has a dose."""
        return self.rows[0][0]

    @property
    def last_pd(self) -> float:
        """The largest deviation that has a dose."""
        return self.rows[-1][0]


@dataclass(frozen=True, kw_only=True)
class Table:
    """One dose table; ``columns`` holds those that it prints."""

    stamp: TableStamp
    columns: Mapping[tuple[Direction, Form, Operation], Column]

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


def table_of(written: DoseTable) -> Table:
    """The table that ``written`` describes; it has been checked."""
    columns = {}
    for direction, rows in ((Direction.ESO, written.esotropia), (Direction.EXO, written.exotropia)):
        for field, (form, operation) in COLUMN_FIELDS.items():
            column = _column(direction, form, operation, _figures(rows, field))
            if column.rows:
                columns[direction, form, operation] = column
    return Table(stamp=_stamp(written), columns=columns)


def _figures(rows: tuple[TableRow, ...], field: str) -> tuple[tuple[float, float], ...]:
    printed = ((row.deviation_pd, getattr(row, field)) for row in rows)
    return tuple((deviation_pd, mm) for deviation_pd, mm in printed if mm is not None)


def _column(direction: Direction, form: Form, operation: Operation, rows: tuple[tuple[float, float], ...]) -> Column:
    muscle = direction.recessed if operation is Operation.RECESS else direction.resected
    return Column(heading=f"{operation} {muscle}, {form.words}", rows=rows)


def _stamp(written: DoseTable) -> TableStamp:
    origin = written.origin
    source = f"{origin.publication}; {origin.place}"
    provenance = Provenance(mark=origin.mark, source=source)
    return TableStamp(id=written.id, name=written.name, provenance=provenance, caution=written.caution)
