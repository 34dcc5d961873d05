"""A clinic's own dose table: from its text, checked, and ready for use."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from dataclasses import replace

from planner.codec import parse, read
from planner.errors import Fault, Refused
from planner.records.dose_table import DoseTable
from planner.tables.checks import check
from planner.tables.shelf import ids
from planner.tables.table import Table, stamp_of, table_of

MOST_CHARACTERS = 60_000
"""Several times the longest table of 80 rows with every figure in it."""

MOST_BRACKETS = 200
"""Eighty rows and their lists, and few enough to be read one in the other."""


def clinics_own(written: DoseTable) -> Table:
    """The table of a clinic; :class:`Refused` as :func:`check_own` does."""
    check_own(written)
    return table_of(written, replace(stamp_of(written), clinics_own=True))


def check_own(written: DoseTable) -> None:
    """What :func:`planner.tables.checks.check` asks, ``id_taken``, and ``not_allowed`` for what lifts a stop.

    A maximum of the table's own would carry a dose beyond every conventional maximum: that takes a reading of the
    source by this project, so a clinic's table cannot bring one.
    """
    check(written)
    faults = list(_faults(written))
    if faults:
        raise Refused(*faults)


def _faults(written: DoseTable) -> Iterator[Fault]:
    if written.id in ids():
        text = "The engine has a table of this id."
        yield Fault(code="id_taken", text=text, field="id", value=written.id, allowed="another id")
    if written.maxima:
        text = "A clinic's own table keeps to the conventional maxima."
        yield Fault(code="not_allowed", text=text, field="maxima", value=f"{len(written.maxima)}", allowed="none")


def from_text(text: object) -> DoseTable:
    """A clinic's table from a file's text, JSON if it begins with a brace, else TOML.

    :class:`Refused` with ``wrong_type``, ``bad_json``, ``bad_toml`` or ``too_long`` where it is neither, and as
    :func:`check_own` does.
    """
    if not isinstance(text, str):
        said = "The table is not given as a file's text."
        raise Refused(Fault(code="wrong_type", text=said, field="text", allowed="a text, TOML or JSON"))
    bare = text.removeprefix("\N{ZERO WIDTH NO-BREAK SPACE}")
    written = read(DoseTable, parse(bare) if bare.lstrip().startswith("{") else _toml(bare))
    check_own(written)
    return written


def _toml(text: str) -> object:
    if len(text) > MOST_CHARACTERS or text.count("[") + text.count("{") > MOST_BRACKETS:
        allowed = f"at most {MOST_CHARACTERS} characters and {MOST_BRACKETS} opening brackets"
        raise Refused(Fault(code="too_long", text="The file is too large for a dose table.", allowed=allowed))
    try:
        return tomllib.loads(text.replace("\r\n", "\n"))
    except ValueError as error:  # not only what is no TOML: a whole number of thousands of digits too
        place = _PLACE.search(str(error))
        where = f"; reading stopped at {place[0]}" if place else ""
        raise Refused(Fault(code="bad_toml", text=f"The file is not TOML{where}.", allowed="TOML text")) from None


_PLACE = re.compile(r"line \d+, column \d+|end of document")
"""The one part of the parser's message that every version of it words alike."""
