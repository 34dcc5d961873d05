"""One operation as a row."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta
from typing import Annotated

from planner.audit.export.ages import age_band
from planner.audit.naming import family_words, table_words
from planner.limits import IsoDate, Within
from planner.precision.steady import steady
from planner.results.definitions import DEFINITIONS, Verdict
from planner.results.result import Result
from planner.results.window import Window
from planner.tables import tables

BAND_PD = 5
CLINICS_OWN = "a clinic's own table"

COLUMNS = (
    "age_band",
    "diagnosis",
    "operation",
    "table",
    "surgeon",
    "operated_on_shifted",
    "before_pd_to_5",
    "expected_pd_to_5",
    "seen_in_window",
    "days_to_visit",
    "left_distance_pd",
    "left_near_pd",
    *(definition.id.replace("-", "_") for definition in DEFINITIONS),
    "operated_again",
    "days_to_operation_again",
)
SHARED = COLUMNS[:5]
"""What somebody may know of a person beforehand: no combination of these stands for fewer than five rows."""


@dataclass(frozen=True, kw_only=True)
class Case:
    """A result, and whose: ``person`` is the number of a shift, and the birth date is used for the age alone."""

    result: Result
    person: Annotated[int, Within(0, 20000, "number of the shift")]
    born_on: Annotated[str, IsoDate()] | None = None


def row(case: Case, shift_days: int, window: Window) -> dict[str, str]:
    """By column; the surgeon by name still, for all rows together give the codes."""
    result = case.result
    visit = window.last_visit(result)
    met = {
        definition.id.replace("-", "_"): _told(definition.judge(result, window)) if definition.concerns(result) else ""
        for definition in DEFINITIONS
    }
    return {
        "age_band": age_band(case.born_on, result.operated_on),
        "diagnosis": result.diagnosis,
        "operation": family_words(result.family),
        "table": _table(result.table),
        "surgeon": result.surgeon,
        "operated_on_shifted": (date.fromisoformat(result.operated_on) + timedelta(days=shift_days)).isoformat(),
        "before_pd_to_5": _banded(result.before_pd),
        "expected_pd_to_5": _banded(result.expected_pd),
        "seen_in_window": "yes" if visit else "no",
        "days_to_visit": str(visit.days_after) if visit else "",
        "left_distance_pd": f"{visit.distance_pd:g}" if visit else "",
        "left_near_pd": f"{visit.near_pd:g}" if visit and visit.near_pd is not None else "",
        **met,
        "operated_again": "no" if result.reoperated_days is None else "yes",
        "days_to_operation_again": "" if result.reoperated_days is None else str(result.reoperated_days),
    }


def _told(verdict: Verdict) -> str:
    match verdict:
        case Verdict.MET:
            return "yes"
        case Verdict.FAILED | Verdict.REOPERATED:
            return "no"
        case Verdict.CANNOT_TELL:
            return "cannot tell"
        case Verdict.MISSING:
            return ""


def _table(table: str) -> str:
    """A clinic may have named its own after somebody."""
    return table_words(table) if any(each.stamp.id == table for each in tables()) else CLINICS_OWN


def _banded(figure: float) -> str:
    return f"{steady(figure / BAND_PD, 0) * BAND_PD + 0.0:g}"
