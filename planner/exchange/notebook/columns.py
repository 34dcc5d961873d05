"""The columns of the file: their names, what stands in them, and a template with one invented row.

The invented row has a reference of its own, so that nobody carries it over by mistake.
"""

from __future__ import annotations

import csv
import io
from dataclasses import dataclass, replace
from typing import Final

from planner.records.diagnosis import Diagnosis
from planner.records.notebook import HorizontalFamily
from planner.tables import tables

EXAMPLE: Final = "EXAMPLE"
VISITS: Final = (1, 2, 3)
MUSCLE_COLUMNS: Final = ("right_mr_mm", "right_lr_mm", "left_mr_mm", "left_lr_mm")
FLAG_COLUMNS: Final = ("operated_before", "suture_moved", "complication", "palsy_or_restriction")


@dataclass(frozen=True, kw_only=True)
class Column:
    """``needed``: no cell of it may be empty. ``words`` says what it holds, ``example`` one such thing."""

    name: str
    needed: bool
    words: str
    example: str


DEVIATION: Final = "with its sign or word: +40, 40 eso, -30, 30 exo"

COLUMNS: Final = (
    Column(name="reference", needed=True, words="the notebook's own number or mark; no name", example=EXAMPLE),
    Column(name="operated_on", needed=True, words="year-month-day", example="2025-03-14"),
    Column(name="age_years", needed=False, words="age at the operation, 0 to 120", example="4"),
    Column(
        name="diagnosis",
        needed=False,
        words=f"one of these, or empty: {', '.join(Diagnosis)}",
        example="infantile esotropia",
    ),
    Column(name="operation", needed=True, words=", ".join(HorizontalFamily), example="recess-both-mr"),
    Column(
        name="table",
        needed=True,
        words="the dose table that was used",
        example="classic-parks",
    ),
    *(
        Column(
            name=name,
            needed=False,
            words="mm that this muscle was moved by, empty where it was not",
            example="5" if "mr" in name else "",
        )
        for name in MUSCLE_COLUMNS
    ),
    Column(
        name="table_dose_pd",
        needed=False,
        words="where no mm are known: the deviation, without sign, that the table was looked up at",
        example="",
    ),
    Column(name="before_distance_pd", needed=True, words=f"deviation operated for, {DEVIATION}", example="35 eso"),
    Column(name="before_near_pd", needed=False, words=f"at near, {DEVIATION}", example="40 eso"),
    *(
        column
        for number in VISITS
        for column in (
            Column(
                name=f"visit_{number}_day",
                needed=False,
                words="days after the operation",
                example={1: "1", 2: "45"}.get(number, ""),
            ),
            Column(
                name=f"visit_{number}_distance_pd",
                needed=False,
                words=f"deviation then, {DEVIATION}; 0 for none",
                example={1: "4 exo", 2: "2 eso"}.get(number, ""),
            ),
            Column(
                name=f"visit_{number}_near_pd",
                needed=False,
                words=f"at near, {DEVIATION}; 0 for none",
                example={2: "4 eso"}.get(number, ""),
            ),
        )
    ),
    Column(name="reoperated_day", needed=False, words="days until operated again, empty if never", example=""),
    Column(
        name="operated_before",
        needed=True,
        words="a horizontal muscle of either eye, or one of these, had been operated before: yes or no",
        example="no",
    ),
    Column(name="suture_moved", needed=True, words="an adjustable suture was moved: yes or no", example="no"),
    Column(name="complication", needed=True, words="a complication at the operation: yes or no", example="no"),
    Column(name="palsy_or_restriction", needed=True, words="a palsy or a restriction: yes or no", example="no"),
)


def all_columns() -> tuple[Column, ...]:
    """With the tables by name: they are read when it is asked, for the engine must start even where one is wrong."""
    names = ", ".join(sorted(each.stamp.id for each in tables()))
    return tuple(
        replace(column, words=f"{column.words}: {names}") if column.name == "table" else column for column in COLUMNS
    )


def template() -> str:
    """The file to fill in: the names of the columns, and one invented row that shows how."""
    text = io.StringIO()
    lines = csv.writer(text, lineterminator="\r\n")
    lines.writerow(column.name for column in COLUMNS)
    lines.writerow(column.example for column in COLUMNS)
    return text.getvalue()
