"""A file of rows to the body of a ``notebook`` record, and everything that is wrong by row and column.

Commas, semicolons or tabs part the cells; a comma in a figure is a decimal one. A column may be left out where no cell
of it is needed; one that is not known is a fault, for what it says would be dropped.
"""

from __future__ import annotations

import csv
import hashlib
import io
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from planner.codec import read
from planner.errors import Fault, Refused
from planner.exchange.notebook import cells
from planner.exchange.notebook.cells import Unreadable
from planner.exchange.notebook.columns import COLUMNS, EXAMPLE, FLAG_COLUMNS, MUSCLE_COLUMNS, VISITS, all_columns
from planner.exchange.notebook.judging import hindrances_of
from planner.records.notebook import CarriedCase, Notebook

MOST_ROWS: Final = 500
LONGEST_SHOWN: Final = 60
NAMES: Final = tuple(column.name for column in COLUMNS)
NEEDED: Final = frozenset(column.name for column in COLUMNS if column.needed)
TAKEN: Final[dict[str, Callable[[str], object]]] = {
    "age_years": cells.number,
    "table_dose_pd": cells.number,
    "before_distance_pd": cells.deviation,
    "before_near_pd": cells.deviation,
    "reoperated_day": cells.whole,
    **dict.fromkeys(MUSCLE_COLUMNS, cells.number),
    **dict.fromkeys(FLAG_COLUMNS, cells.answer),
    **{f"visit_{number}_day": cells.whole for number in VISITS},
    **{f"visit_{number}_{at}_pd": cells.deviation for number in VISITS for at in ("distance", "near")},
}
COLUMN_OF_FIELD: Final = {
    "before_pd": "before_distance_pd",
    "reoperated_days": "reoperated_day",
    "family": "operation",
    "muscles": "operation",
}


@dataclass(frozen=True, kw_only=True)
class RowFault:
    """One thing that is wrong in the file; ``row`` is its line, 1 the names of the columns."""

    row: int
    column: str
    code: str
    text: str
    value: str
    allowed: str


@dataclass(frozen=True)
class Cell:
    """A place in the file; ``column`` is empty for a whole row."""

    row: int
    column: str

    def wrong(self, code: str, text: str, value: str, allowed: str) -> RowFault:
        """What is wrong there."""
        shown = value[:LONGEST_SHOWN]
        return RowFault(row=self.row, column=self.column, code=code, text=text, value=shown, allowed=allowed)


@dataclass(frozen=True, kw_only=True)
class NotebookReading:
    """``rows`` with cases in them; ``already``: lines of cases that were carried over before and are not taken again.

    ``notebook`` is what would be saved: null with any fault, and where nothing is new.
    """

    rows: int
    already: tuple[int, ...]
    faults: tuple[RowFault, ...]
    notebook: Notebook | None


def read_notebook(text: str, *, title: str, surgeon_name: str, held: Sequence[Notebook]) -> NotebookReading:
    """The dry run. ``held`` are the surgeon's notebooks that were carried over and not taken back."""
    lines = _lines(text)
    names, faults = _header(lines)
    rows = [] if faults else [(line, row) for line, row in lines[1:] if any(row)]
    if not faults and not rows:
        faults.append(
            Cell(1, "").wrong("no_rows", "There is no row below the names of the columns.", "", "1 row or more")
        )
    if len(rows) > MOST_ROWS:
        allowed = f"at most {MOST_ROWS} in one file"
        faults.append(Cell(1, "").wrong("too_long", "The file has too many rows. Part it.", str(len(rows)), allowed))
        return NotebookReading(rows=len(rows), already=(), faults=tuple(faults), notebook=None)
    known = {_key(case): case for notebook in held if notebook.surgeon_name == surgeon_name for case in notebook.cases}
    taken: dict[tuple[str, str], CarriedCase] = {}
    already = []
    for line, row in rows:
        case = _case(line, names, row, faults)
        if case is None:
            continue
        if _key(case) in taken:
            faults.append(_repeated(case, f"line {taken[_key(case)].row}"))
        elif _key(case) in known and _same(known[_key(case)], case):
            already.append(line)
        elif _key(case) in known:
            faults.append(_other_than_held(case))
        else:
            taken[_key(case)] = case
    notebook = None
    if taken and not faults:
        notebook = Notebook(
            title=title,
            surgeon_name=surgeon_name,
            file_digest=hashlib.sha256(text.encode("utf-8", "surrogatepass")).hexdigest(),
            cases=tuple(taken.values()),
        )
    return NotebookReading(rows=len(rows), already=tuple(already), faults=tuple(faults), notebook=notebook)


def _lines(text: str) -> list[tuple[int, list[str]]]:
    plain = text.removeprefix("\ufeff")
    first = plain.partition("\n")[0]
    mark = max((",", ";", "\t"), key=first.count)
    reader = csv.reader(io.StringIO(plain, newline=""), delimiter=mark)
    try:
        return [(reader.line_num, [cell.strip() for cell in row]) for row in reader]
    except csv.Error:
        return []


def _header(lines: list[tuple[int, list[str]]]) -> tuple[list[str], list[RowFault]]:
    names = lines[0][1] if lines else []
    faults = [
        Cell(1, name).wrong("unknown_column", "There is no such column.", name, ", ".join(NAMES))
        for name in names
        if name not in NAMES
    ]
    faults += [
        Cell(1, name).wrong("missing", "This column is missing.", "", "the column, filled in every row")
        for name in NAMES
        if name in NEEDED and name not in names
    ]
    faults += [
        Cell(1, name).wrong("repeated", "This column stands there twice.", name, "each column once")
        for name in NAMES
        if names.count(name) > 1
    ]
    return names, faults


def _case(line: int, names: list[str], row: list[str], faults: list[RowFault]) -> CarriedCase | None:
    before = len(faults)
    if EXAMPLE in row:
        text = "This is the invented row of the empty table."
        faults.append(Cell(line, "reference").wrong("example", text, EXAMPLE, "your own cases; delete this row"))
    if len(row) > len(names):
        text = "This row has more cells than there are columns."
        faults.append(Cell(line, "").wrong("too_many_cells", text, str(len(row)), f"{len(names)} cells"))
    given = {name: cell for name, cell in zip(names, row, strict=False) if cell}
    faults += [
        Cell(line, name).wrong("missing", "This cell is empty.", "", _allowed(name))
        for name in NAMES
        if name in NEEDED and name not in given
    ]
    taken: dict[str, object] = {}
    for name, cell in given.items():
        try:
            taken[name] = TAKEN.get(name, cells.words)(cell)
        except Unreadable as why:
            faults.append(Cell(line, name).wrong("unreadable", why.text, cell, why.allowed))
    faults += _loose_visits(line, given)
    if len(faults) > before:
        return None
    try:
        case = read(CarriedCase, _body(line, taken))
    except Refused as refused:
        faults += [_placed(line, fault, given, taken) for fault in refused.faults]
        return None
    faults += [_placed(line, fault, given, taken) for fault in hindrances_of(case)]
    return case if len(faults) == before else None


def _loose_visits(line: int, given: dict[str, str]) -> Iterator[RowFault]:
    for number in VISITS:
        day, distance, near = (f"visit_{number}_{part}" for part in ("day", "distance_pd", "near_pd"))
        for name, other in ((day, distance), (distance, day), (day, near), (distance, near)):
            if name not in given and other in given and name in (day, distance):
                yield Cell(line, name).wrong(
                    "missing", "A visit needs its day and its deviation at distance.", "", "both"
                )
                break


def _body(line: int, taken: dict[str, object]) -> dict[str, object]:
    muscles = [
        {"eye": name.split("_")[0], "muscle": name.split("_")[1].upper(), "mm": taken[name]}
        for name in MUSCLE_COLUMNS
        if name in taken
    ]
    seen = [
        {
            "days_after": taken[f"visit_{number}_day"],
            "distance_pd": taken[f"visit_{number}_distance_pd"],
            "near_pd": taken.get(f"visit_{number}_near_pd"),
        }
        for number in VISITS
        if f"visit_{number}_day" in taken
    ]
    plain = ("reference", "operated_on", "table", *FLAG_COLUMNS)
    return {name: taken[name] for name in plain} | {
        "row": line,
        "age_years": taken.get("age_years"),
        "diagnosis": taken.get("diagnosis"),
        "family": taken["operation"],
        "muscles": muscles or None,
        "table_dose_pd": taken.get("table_dose_pd"),
        "before_pd": taken["before_distance_pd"],
        "before_near_pd": taken.get("before_near_pd"),
        "seen": seen,
        "reoperated_days": taken.get("reoperated_day"),
    }


def _placed(line: int, fault: Fault, given: dict[str, str], taken: dict[str, object]) -> RowFault:
    """A fault of the case's body at the cell that it comes from."""
    head, *rest = fault.field.split(".")
    column = COLUMN_OF_FIELD.get(head, head)
    if rest and head == "muscles":
        column = [name for name in MUSCLE_COLUMNS if name in taken][int(rest[0])]
    if rest and head == "seen":
        number = [number for number in VISITS if f"visit_{number}_day" in taken][int(rest[0])]
        part = {"days_after": "day"}.get(rest[1], rest[1]) if len(rest) > 1 else "day"
        column = f"visit_{number}_{part}"
    return Cell(line, column).wrong(fault.code, fault.text, given.get(column, fault.value), fault.allowed)


def _repeated(case: CarriedCase, other: str) -> RowFault:
    text = f"This case stands in the file twice: the same reference and day as {other}."
    return Cell(case.row, "reference").wrong("repeated", text, case.reference, "each case once")


def _other_than_held(case: CarriedCase) -> RowFault:
    text = "A case of this reference and day was carried over before, with other figures."
    return Cell(case.row, "reference").wrong(
        "differs", text, case.reference, "the same figures, or take back that import first"
    )


def _key(case: CarriedCase) -> tuple[str, str]:
    return case.reference, case.operated_on


def _same(one: CarriedCase, other: CarriedCase) -> bool:
    return _but_row(one) == _but_row(other)


def _but_row(case: CarriedCase) -> dict[str, object]:
    return {name: value for name, value in vars(case).items() if name != "row"}


def _allowed(name: str) -> str:
    return next(column.words for column in all_columns() if column.name == name)
