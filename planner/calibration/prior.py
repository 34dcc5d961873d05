"""Where one starts: the table as it stands, with the spread that was published for the family or is borrowed for it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from planner.calibration.scatter import relative_variance
from planner.prediction import SPREADS, Spread
from planner.provenance import Mark, Provenance

WEIGHT_CASES: Final = 20.0
"""The table counts like so many cases of one's own: five cases barely move it."""
VARIANCE_CASES: Final = 10.0
"""The published spread counts like so many cases."""
WEIGHTS = Provenance(
    mark=Mark.HOUSE_RULE,
    source=f"the table counts as {WEIGHT_CASES:g} cases, the published spread as {VARIANCE_CASES:g}",
)
EXOTROPIA: Final = "xt-one-eye-adult"
OTHERWISE: Final = "et-three-muscles"


@dataclass(frozen=True, kw_only=True)
class Prior:
    """Normal and inverse gamma: mean, weight in cases, shape and scale of the variance; and whose spread it is.

    The variance is that of a ratio at the reference angle, and so is a case that ``weight`` counts in.
    """

    mean: float
    weight: float
    shape: float
    scale: float
    spread: Spread

    @property
    def sd(self) -> float:
        """The standard deviation of one case's ratio before anything was learned."""
        return self.spread.sd / self.spread.mean

    def relative_variance(self, promised_pd: float) -> float:
        """How many times larger the variance of a ratio is where so much was promised."""
        return relative_variance(promised_pd, self.sd)


def prior(family: str) -> Prior:
    """The prior of a family. A published spread divided by its mean is per unit of promised effect."""
    exotropia = family.startswith(("recess-lr-resect-mr", "recess-both-lr", "recess-lr", "resect-both-mr", "resect-mr"))
    spread = SPREADS[EXOTROPIA if exotropia else OTHERWISE]
    variance = (spread.sd / spread.mean) ** 2
    shape = VARIANCE_CASES / 2
    return Prior(mean=1.0, weight=WEIGHT_CASES, shape=shape, scale=variance * shape, spread=spread)
