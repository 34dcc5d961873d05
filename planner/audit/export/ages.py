"""An age as a band, wide enough to be shared and narrow enough to be of use."""

from __future__ import annotations

from typing import Final

from planner.age import age_years

BANDS: Final = ((2, "under 2"), (5, "2 to 4"), (10, "5 to 9"), (18, "10 to 17"), (40, "18 to 39"), (65, "40 to 64"))
OLDEST: Final = "65 and over"
UNKNOWN: Final = "not known"


def age_band(born_on: str | None, on: str) -> str:
    """The band of the age at a date."""
    if born_on is None or born_on > on:
        return UNKNOWN
    years = age_years(born_on, on)
    return next((words for limit, words in BANDS if years < limit), OLDEST)
