"""How much a case's ratio scatters at its angle, against the angle at which scatter is taken as published.

An operation's effect scatters in proportion to what was promised, the readings before and after it do not: their error
in Δ is the same, so it is the more of a ratio the less was promised. A published spread holds both. Taken apart at
``REFERENCE_PD`` and put together at another angle they say how many times larger the variance of a ratio is there; the
scale of it is learned.
"""

from __future__ import annotations

from typing import Final

from planner.precision.limits import HOLMES, SMALL_ANGLE
from planner.precision.strength import TWO_SIDED_95
from planner.provenance import Mark, Provenance
from planner.records.examination import Range

DIFFERENCE_PD: Final = SMALL_ANGLE[Range.DISTANCE][1]
"""95 % limits of the difference of two readings at distance."""
READING_SD_PD: Final = DIFFERENCE_PD / TWO_SIDED_95
REFERENCE_PD: Final = 40.0
LEAST_PD: Final = 1.0
"""No past case promised less."""
READINGS: Final = Provenance(
    mark=Mark.PUBLISHED,
    source=f"{HOLMES.source}; two readings at distance, {DIFFERENCE_PD:g} Δ, which is used at every angle",
)
REFERENCE: Final = Provenance(
    mark=Mark.HOUSE_RULE, source=f"a published spread is taken as that of operations for {REFERENCE_PD:g} Δ"
)


def relative_variance(promised_pd: float, published_sd: float) -> float:
    """The variance of a ratio there, 1 at the reference; ``published_sd`` is of a ratio, readings and effect in one."""
    readings = READING_SD_PD**2 * (1 / max(LEAST_PD, promised_pd) ** 2 - 1 / REFERENCE_PD**2)
    return 1 + readings / published_sd**2
