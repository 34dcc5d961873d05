"""Student's t: its distribution is an incomplete beta function (NIST DLMF 8.17, Abramowitz and Stegun 26.7.1)."""

from __future__ import annotations

from math import sqrt

from planner.statistics.beta import beta_quantile


def student_quantile(probability: float, freedom: float) -> float:
    """The quantile of t with ``freedom`` degrees of freedom (any positive number), for 0 < probability < 1."""
    tail = min(probability, 1 - probability)
    if tail == 0.5:  # noqa: PLR2004 -- the middle
        return 0.0
    x = beta_quantile(2 * tail, freedom / 2, 0.5)
    size = sqrt(freedom * (1 - x) / x)
    return size if probability > 0.5 else -size  # noqa: PLR2004 -- the middle
