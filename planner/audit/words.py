"""How an audit writes its figures."""

from __future__ import annotations

from planner.charts.axis import signed
from planner.precision.steady import steady
from planner.statistics import Proportion, Summary

NOTHING = "\N{EM DASH}"
GAP = "\N{NO-BREAK SPACE}"


def percent(share: float | None) -> str:
    """``70 %``."""
    return NOTHING if share is None else f"{steady(share * 100, 0):.0f}{GAP}%"


def interval(low: float | None, high: float | None) -> str:
    """``51 to 85 %``."""
    if low is None or high is None:
        return NOTHING
    return f"{steady(low * 100, 0):.0f} to {percent(high)}"


def counted(found: Proportion) -> str:
    """``21 of 30``."""
    return f"{found.count} of {found.cases}"


def whole(found: Proportion) -> str:
    """``21 of 30, 70 % (95 % interval 51 to 85 %)``."""
    if found.share is None:
        return counted(found)
    return f"{counted(found)}, {percent(found.share)} (95{GAP}% interval {interval(found.low, found.high)})"


def dioptres(figure: float | None) -> str:
    """With its sign: ``+2.5 Δ``."""
    if figure is None:
        return NOTHING
    rounded = steady(figure, 1)
    return f"{'+' if rounded > 0 else ''}{signed(rounded)}{GAP}Δ"


def plain(figure: float | None) -> str:
    """Without a sign: ``6.1 Δ``."""
    return NOTHING if figure is None else f"{steady(abs(figure), 1):g}{GAP}Δ"


def spread(found: Summary) -> str:
    """``mean +1.2 Δ, standard deviation 6.1 Δ, median +2 Δ, middle half -3 Δ to +5 Δ``."""
    if found.mean is None:
        return "no figures"
    return (
        f"mean {dioptres(found.mean)}, standard deviation {plain(found.sd)}, median {dioptres(found.median)}, "
        f"middle half {dioptres(found.lower_quartile)} to {dioptres(found.upper_quartile)}"
    )


def operations(count: int) -> str:
    """``1 operation``, ``30 operations``."""
    return f"{count} operation{'' if count == 1 else 's'}"
