"""How the card writes sides, dates, moments and millimetres."""

from __future__ import annotations

from collections.abc import Set as AbstractSet
from datetime import date, datetime

from planner.anatomy import Eye

MONTHS = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip


def eye_words(eyes: AbstractSet[Eye]) -> str:
    """``RIGHT EYE``, ``LEFT EYE`` or ``BOTH EYES``."""
    if len(eyes) > 1:
        return "BOTH EYES"
    (eye,) = eyes
    return f"{eye.value.upper()} EYE"


def date_words(iso_date: str) -> str:
    """``2019-03-14`` as ``14 March 2019``: a month in letters cannot be taken for a day."""
    return _day(date.fromisoformat(iso_date))


def moment_words(iso_moment: str) -> str:
    """``2026-11-25T09:30:00+01:00`` as ``25 November 2026, 09:30 (UTC+01:00)``, in the signer's own time."""
    moment = datetime.fromisoformat(iso_moment)
    zone = moment.strftime("%z")
    return f"{_day(moment)}, {moment:%H:%M} (UTC{zone[:3]}:{zone[3:5]})"


def mm_words(mm: float) -> str:
    """Millimetres with one decimal, or as many as the figure has up to six: a figure is never rounded away."""
    exact = f"{mm:.6f}".rstrip("0")
    figure = f"{exact}0" if exact.endswith(".") else exact
    return f"{figure}\N{NO-BREAK SPACE}mm"


def _day(day: date) -> str:
    return f"{day.day} {MONTHS[day.month - 1]} {day.year}"
