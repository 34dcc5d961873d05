"""The tables that come with the engine, read from their files once."""

from __future__ import annotations

import tomllib
from functools import cache
from pathlib import Path

from planner.codec import read
from planner.errors import Fault, Refused
from planner.provenance import Mark
from planner.records.dose_table import DoseTable
from planner.tables.checks import check
from planner.tables.table import Table, stamp_of, table_of

FOLDER = Path(__file__).parent


def table(table_id: str) -> Table:
    """The table of that id; :class:`Refused` with ``unknown_table`` where there is none."""
    known = ids()
    if table_id not in known:
        allowed = ", ".join(known)
        text = "There is no such dose table."
        raise Refused(Fault(code="unknown_table", text=text, field="table", value=table_id, allowed=allowed))
    return _open(table_id)


def tables() -> tuple[Table, ...]:
    """All tables: those for usual angles first, of these the most trustworthy; a new user starts from the first."""
    return tuple(sorted(map(_open, ids()), key=_place))


def _place(each: Table) -> tuple[bool, int, str]:
    return each.only_as_printed, tuple(Mark).index(each.provenance.mark), each.stamp.id


@cache
def ids() -> tuple[str, ...]:
    """The ids of the engine's own tables."""
    return tuple(sorted(file.stem for file in FOLDER.glob("*.toml")))


@cache
def _open(table_id: str) -> Table:
    text = (FOLDER / f"{table_id}.toml").read_text(encoding="utf-8")
    written = read_table(tomllib.loads(text))
    if written.id != table_id:
        text = "The table's id is not the name of its file."
        raise Refused(Fault(code="not_allowed", text=text, field="id", value=written.id, allowed=table_id))
    return table_of(written, stamp_of(written))


def read_table(json_value: object) -> DoseTable:
    """A dose table from its written form; :class:`Refused` names every key and row that is wrong."""
    written = read(DoseTable, json_value)
    check(written)
    return written
