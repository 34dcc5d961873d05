"""What a handful of figures has in common."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import floor, fsum, sqrt

TWO = 2


@dataclass(frozen=True, kw_only=True)
class Summary:
    """Null where there are too few figures: the mean and the quartiles need one, the standard deviation two."""

    cases: int
    mean: float | None
    sd: float | None
    lower_quartile: float | None
    median: float | None
    upper_quartile: float | None


def summary(figures: Sequence[float]) -> Summary:
    """Quartiles by linear interpolation between the ordered figures."""
    ordered = sorted(figures)
    return Summary(
        cases=len(ordered),
        mean=_mean(ordered),
        sd=_deviation(ordered),
        lower_quartile=_quantile(ordered, 0.25),
        median=_quantile(ordered, 0.5),
        upper_quartile=_quantile(ordered, 0.75),
    )


def _mean(figures: Sequence[float]) -> float | None:
    return fsum(figures) / len(figures) if figures else None


def _deviation(figures: Sequence[float]) -> float | None:
    mean = _mean(figures)
    if mean is None or len(figures) < TWO:
        return None
    return sqrt(fsum((figure - mean) ** 2 for figure in figures) / (len(figures) - 1))


def _quantile(ordered: Sequence[float], share: float) -> float | None:
    if not ordered:
        return None
    place = share * (len(ordered) - 1)
    below = floor(place)
    above = min(below + 1, len(ordered) - 1)
    return ordered[below] + (place - below) * (ordered[above] - ordered[below])
