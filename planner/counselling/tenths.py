"""A chance as so many of ten, no finer than people can take it in.

House rule: within two per cent of a whole tenth it is that tenth, between two tenths it is both, and beyond 8 and 92
per cent it is less than one or more than nine of ten.
"""

from __future__ import annotations

from typing import Final

from planner.counselling.saying import says
from planner.values.counselling import Said

LEAST, MOST, NEAR = 8.0, 92.0, 2.0
TENTH: Final = 10.0


def tenths(percent: float) -> Said:
    """The chance of straight or nearly straight eyes, given in per cent."""
    if percent < LEAST:
        return says("Fewer than 1 of 10 people are expected to have straight or nearly straight eyes afterwards.")
    if percent > MOST:
        return says("More than 9 of 10 people are expected to have straight or nearly straight eyes afterwards.")
    nearest = round(percent / TENTH)
    if abs(percent - nearest * TENTH) <= NEAR:
        return says(
            "About {tenths} of 10 people are expected to have straight or nearly straight eyes afterwards.",
            tenths=f"{nearest}",
        )
    low = int(percent // TENTH)
    return says(
        "About {low} to {high} of 10 people are expected to have straight or nearly straight eyes afterwards.",
        low=f"{low}",
        high=f"{low + 1}",
    )
