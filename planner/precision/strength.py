"""How firmly a finding stands, given the error of the readings it was made from.

Comparisons carry a tolerance and use only operations that every machine rounds alike, so two devices never disagree.
"""

from __future__ import annotations

from planner.values.statement import Strength

TWO_SIDED_95 = 1.96
ONE_SIDED_95 = 1.645
TOLERANCE_PD = 1e-6


def weakest(first: Strength, *others: Strength) -> Strength:
    """A chain of findings is as strong as its weakest link."""
    order = tuple(Strength)
    return max((first, *others), key=order.index)


def sign_strength(difference_pd: float, limits_pd: float) -> Strength:
    """Whether a difference has a direction at all.

    Clear from its 95 % limits on; borderline from one standard deviation (limits / 1.96) on, where the direction is
    right about five times in six; below that it cannot be told.
    """
    size = abs(difference_pd) + TOLERANCE_PD
    if size >= limits_pd:
        return Strength.CLEAR
    if size >= limits_pd / TWO_SIDED_95:
        return Strength.BORDERLINE
    return Strength.CANNOT_TELL


def threshold_strength(difference_pd: float, threshold_pd: float, limits_pd: float) -> Strength:
    """Whether a figure with 95 % limits ``limits_pd`` is surely on its side of a threshold.

    Clear when the one-sided 95 % bound does not cross the threshold, otherwise borderline.
    """
    bound_pd = limits_pd * ONE_SIDED_95 / TWO_SIDED_95
    far = abs(difference_pd - threshold_pd) + TOLERANCE_PD >= bound_pd
    return Strength.CLEAR if far else Strength.BORDERLINE
