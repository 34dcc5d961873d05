"""What makes rows of figures a dose table that may be used."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from planner.direction import Direction
from planner.errors import Fault, Refused
from planner.figures import mm
from planner.maxima import MAXIMA
from planner.provenance import Mark
from planner.records.dose_table import Between, DoseTable, TableRow
from planner.tables.table import COLUMN_FIELDS, moved
from planner.thresholds import exceeds

WIDEST_STEP_PD = 10.0
"""The widest step between rows in any printed table of ours; a wider one is more likely a row forgotten."""

WIDEST_BAND_STEP_PD = 1.0
"""Bands are printed in whole prism dioptres: 69 is followed by 70."""

MARKS = (Mark.PUBLISHED, Mark.FROM_MEMORY, Mark.COMMON_PRACTICE)
"""What the figures of a table may be; the other marks are for what the engine itself finds."""


def check(written: DoseTable) -> None:
    """Raise :class:`Refused` with every row that breaks the order of a table, and every dose beyond its maxima."""
    faults = [
        *_faults_of_origin(written),
        *_faults_of_maxima(written),
        *_faults_of_rows(written, Direction.ESO, "esotropia", written.esotropia),
        *_faults_of_rows(written, Direction.EXO, "exotropia", written.exotropia),
    ]
    if faults:
        raise Refused(*faults)


def _faults_of_origin(written: DoseTable) -> Iterator[Fault]:
    mark = written.origin.mark
    if mark not in MARKS:
        text = "A table's figures cannot be of this kind."
        yield Fault(code="not_allowed", text=text, field="origin.mark", value=mark.value, allowed=", ".join(MARKS))


def _faults_of_maxima(written: DoseTable) -> Iterator[Fault]:
    for place, own in enumerate(written.maxima):
        conventional = MAXIMA.get((own.muscle, own.operation))
        if conventional is None or not exceeds(own.mm, conventional.widest_mm):
            least = f"above {mm(conventional.widest_mm)}" if conventional else "a recession or resection of a rectus"
            text = "A maximum of the table's own is for what goes beyond the widest conventional maximum."
            value = f"{own.muscle} {own.operation} {own.mm:g}"
            yield Fault(code="not_allowed", text=text, field=f"maxima.{place}", value=value, allowed=least)


def _faults_of_rows(written: DoseTable, direction: Direction, name: str, rows: tuple[TableRow, ...]) -> Iterator[Fault]:
    if written.between is Between.BANDS:
        yield from _faults_of_bands(name, rows)
    else:
        yield from _faults_of_steps(name, rows)
    for field, (_, operation) in COLUMN_FIELDS.items():
        figures = [getattr(row, field) for row in rows]
        yield from _faults_of_column(f"{name}.{{}}.{field}", figures)
        muscle = moved(direction, operation)
        own = next((each.mm for each in written.maxima if (each.muscle, each.operation) == (muscle, operation)), None)
        most_mm = own if own is not None else MAXIMA[muscle, operation].widest_mm
        for place, figure in enumerate(figures):
            if figure is not None and exceeds(figure, most_mm):
                text = f"The dose is beyond the widest maximum of a {muscle.words} {operation.noun}."
                where = f"{name}.{place}.{field}"
                yield Fault(
                    code="above_widest_maximum",
                    text=text,
                    field=where,
                    value=f"{figure:g}",
                    allowed=f"to {mm(most_mm)}",
                )
    for place, row in enumerate(rows):
        if (row.one_recess_mm is None) is not (row.one_resect_mm is None):
            text = "The one-eye columns belong together: both have a figure or neither."
            yield _fault("gap", text, f"{name}.{place}", row.deviation_pd)


def _faults_of_steps(name: str, rows: tuple[TableRow, ...]) -> Iterator[Fault]:
    for place, row in enumerate(rows):
        if row.to_pd is not None:
            text = "Only a table of bands has an upper end."
            yield _fault("not_allowed", text, f"{name}.{place}.to_pd", row.to_pd)
    for place, (before, row) in enumerate(pairwise(rows), start=1):
        yield from _faults_between(f"{name}.{place}.deviation_pd", before.deviation_pd, row, WIDEST_STEP_PD)


def _faults_of_bands(name: str, rows: tuple[TableRow, ...]) -> Iterator[Fault]:
    for place, row in enumerate(rows):
        where = f"{name}.{place}.to_pd"
        if row.to_pd is None:
            yield Fault(code="missing", text="A band needs its upper end.", field=where)
        elif row.to_pd < row.deviation_pd:
            yield _fault("not_rising", "The band ends below its beginning.", where, row.to_pd)
        elif row.to_pd - row.deviation_pd > WIDEST_STEP_PD:
            yield _fault("gap", f"The band is wider than {WIDEST_STEP_PD:g} Δ.", where, row.to_pd)
    for place, (before, row) in enumerate(pairwise(rows), start=1):
        if before.to_pd is not None:
            yield from _faults_between(f"{name}.{place}.deviation_pd", before.to_pd, row, WIDEST_BAND_STEP_PD)


def _faults_between(where: str, before_pd: float, row: TableRow, widest_pd: float) -> Iterator[Fault]:
    step = row.deviation_pd - before_pd
    if step <= 0:
        yield _fault("not_rising", "The deviation does not rise from row to row.", where, row.deviation_pd)
    elif step > widest_pd:
        yield _fault("gap", f"A row is missing: {step:g} Δ lie between it and the row before.", where, step)


def _faults_of_column(where: str, figures: list[float | None]) -> Iterator[Fault]:
    present = [(place, figure) for place, figure in enumerate(figures) if figure is not None]
    if len(present) == 1:
        yield _fault("gap", "A column needs two rows at least.", where.format(present[0][0]), present[0][1])
    for (place_before, before), (place, figure) in pairwise(present):
        if place != place_before + 1:
            yield _fault("gap", "The column has a hole above this row.", where.format(place), figure)
        if figure < before:
            yield _fault("not_rising", "The dose falls although the deviation rises.", where.format(place), figure)


def _fault(code: str, text: str, field: str, value: float) -> Fault:
    return Fault(code=code, text=text, field=field, value=f"{value:g}")
