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
    """The words of a chance in per cent."""
    if percent < LEAST:
        return says("fewer than 1 of 10 people")
    if percent > MOST:
        return says("more than 9 of 10 people")
    nearest = round(percent / TENTH)
    if abs(percent - nearest * TENTH) <= NEAR:
        return says("about {tenths} of 10 people", tenths=f"{nearest}")
    low = int(percent // TENTH)
    return says("about {low} to {high} of 10 people", low=f"{low}", high=f"{low + 1}")
