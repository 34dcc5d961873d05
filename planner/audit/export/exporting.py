"""The file, from results and shifts."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from string import ascii_uppercase
from typing import Annotated

from planner.audit.export.protection import protection
from planner.audit.export.rows import COLUMNS, SHARED, Case, row
from planner.audit.export.suppression import HIDDEN, suppressed
from planner.audit.export.writing import written
from planner.errors import Fault, Refused
from planner.limits import Length, Within
from planner.results.window import Window
from planner.values.statement import Notice

LEAST_SHIFT_DAYS = 30
MOST_SHIFT_DAYS = 364
HIDING = ("surgeon", "table", "age_band", "diagnosis", "operation")
"""In this order: what a reader of the file needs most is hidden last."""

Shift = Annotated[int, Within(-MOST_SHIFT_DAYS, MOST_SHIFT_DAYS, "days")]


@dataclass(frozen=True, kw_only=True)
class Question:
    """Cases, and one shift for each person, drawn at random by who asks; the visit that counts as in an audit."""

    cases: Annotated[tuple[Case, ...], Length(0, 20000)]
    shifts_days: Annotated[tuple[Shift, ...], Length(0, 20000)]
    first_days: Annotated[int, Within(1, 3650, "days")] = 28
    last_days: Annotated[int, Within(1, 3650, "days")] = 120


@dataclass(frozen=True, kw_only=True)
class Exported:
    """The file's text, how many rows it has and lacks, and what it protects against."""

    csv: str
    rows: int
    left_out: int
    notices: tuple[Notice, ...]


def export(asked: Question) -> Exported:
    """Refused with ``shift_missing`` or ``shift_too_small`` where a person's dates would stay, or nearly stay."""
    _refuse_bad_shifts(asked)
    window = Window(first_days=asked.first_days, last_days=asked.last_days)
    rows = [row(case, asked.shifts_days[case.person], window) for case in asked.cases]
    kept, left_out = suppressed(rows, HIDING)
    ordered = _coded(sorted(kept, key=lambda each: (each["operated_on_shifted"], *(each[name] for name in SHARED))))
    return Exported(
        csv=written(ordered, COLUMNS),
        rows=len(kept),
        left_out=left_out,
        notices=tuple(protection(len(kept), left_out)),
    )


def _refuse_bad_shifts(asked: Question) -> None:
    allowed = f"{LEAST_SHIFT_DAYS} to {MOST_SHIFT_DAYS} days, either way"
    for place, case in enumerate(asked.cases):
        if case.person >= len(asked.shifts_days):
            text = "There is no shift for this person."
            raise Refused(Fault(code="shift_missing", text=text, field=f"cases.{place}.person", value=str(case.person)))
    for place, shift in enumerate(asked.shifts_days):
        if abs(shift) < LEAST_SHIFT_DAYS:
            text = "This shift leaves dates nearly as they are."
            raise Refused(
                Fault(
                    code="shift_too_small", text=text, field=f"shifts_days.{place}", value=str(shift), allowed=allowed
                )
            )


def _coded(rows: Iterable[Mapping[str, str]]) -> tuple[dict[str, str], ...]:
    """Surgeons by a letter, or a number beyond the alphabet, in the order in which they appear."""
    codes: dict[str, str] = {HIDDEN: HIDDEN}
    coded = []
    for each in rows:
        place = len(codes) - 1
        code = codes.setdefault(each["surgeon"], ascii_uppercase[place] if place < len(ascii_uppercase) else str(place))
        coded.append({**each, "surgeon": code})
    return tuple(coded)
