"""A day's list as theatre reads it."""

from __future__ import annotations

from dataclasses import dataclass

from planner.values.kit import CaseNeeds, KitLine
from planner.values.statement import Notice


@dataclass(frozen=True, kw_only=True)
class ListRow:
    """One operation. Words are empty, and ``age_years`` null, where this device does not hold the records.

    ``operation`` has a line per muscle with its eye in words. ``adjust_from`` is the earliest moment for adjusting
    after a block, empty if none.
    """

    number: int
    starts_at: str
    ends_at: str
    duration_min: int
    full_name: str
    born_on: str
    age_years: int | None
    hospital_number: str
    allergies: str
    eyes_words: str
    operation: tuple[str, ...]
    check_word: str
    anaesthesia_words: str
    magnification_words: str
    adjusting_words: str
    adjust_from: str
    note: str
    notices: tuple[Notice, ...]


@dataclass(frozen=True, kw_only=True)
class DayList:
    """``total_min`` runs from the first operation's start to the last one's end; ``needs`` are what ``kit`` counts.

    ``kit_notices`` say which operations it could not count.
    """

    on: str
    team: str
    place: str
    starts_at: str
    ends_at: str
    total_min: int
    turnover_min: int
    rows: tuple[ListRow, ...]
    kit: tuple[KitLine, ...]
    kit_notices: tuple[Notice, ...]
    needs: tuple[CaseNeeds, ...]
    spare_words: str
    practice_words: str
    engine_version: str
    disclaimer: str
