"""What makes rows of figures a dose table that may be interpolated in."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from planner.errors import Fault, Refused
from planner.records.dose_table import DoseTable, TableRow
from planner.tables.table import COLUMN_FIELDS

WIDEST_STEP_PD = 10.0
"""The widest step between rows in any printed table of ours; a wider one is more likely a row forgotten."""


def check(written: DoseTable) -> None:
    """Raise :class:`Refused` with every row that breaks the order of a table."""
    faults = [
        *_faults_of_rows("esotropia", written.esotropia),
        *_faults_of_rows("exotropia", written.exotropia),
    ]
    if faults:
        raise Refused(*faults)


def _faults_of_rows(name: str, rows: tuple[TableRow, ...]) -> Iterator[Fault]:
    for place, (before, row) in enumerate(pairwise(rows), start=1):
        where = f"{name}.{place}.deviation_pd"
        step = row.deviation_pd - before.deviation_pd
        if step <= 0:
            yield _fault("not_rising", "The deviation does not rise from row to row.", where, row.deviation_pd)
        elif step > WIDEST_STEP_PD:
            yield _fault("gap", f"A row is missing: {step:g} Δ lie between it and the row before.", where, step)
    for field in COLUMN_FIELDS:
        yield from _faults_of_column(f"{name}.{{}}.{field}", [getattr(row, field) for row in rows])
    for place, row in enumerate(rows):
        if (row.one_recess_mm is None) is not (row.one_resect_mm is None):
            text = "The one-eye columns belong together: both have a figure or neither."
            yield _fault("gap", text, f"{name}.{place}", row.deviation_pd)


def _faults_of_column(where: str, figures: list[float | None]) -> Iterator[Fault]:
    present = [(place, mm) for place, mm in enumerate(figures) if mm is not None]
    if len(present) == 1:
        yield _fault("gap", "A column needs two rows at least.", where.format(present[0][0]), present[0][1])
    for (place_before, before), (place, mm) in pairwise(present):
        if place != place_before + 1:
            yield _fault("gap", "The column has a hole above this row.", where.format(place), mm)
        if mm < before:
            yield _fault("not_rising", "The dose falls although the deviation rises.", where.format(place), mm)


def _fault(code: str, text: str, field: str, value: float) -> Fault:
    return Fault(code=code, text=text, field=field, value=f"{value:g}")
