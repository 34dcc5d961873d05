"""Rounding at the boundary: the phone's and the server's mathematics libraries may differ in the last place."""

from __future__ import annotations

NOISE_DIGITS = 9


def steady(value: float, digits: int) -> float:
    """``value`` rounded to ``digits`` decimals, the same on every library, and never minus zero.

    The last places are dropped first, so that a figure that is a tie on paper (31.25) is a tie on both sides before it
    is rounded, half to even.
    """
    return round(round(value, NOISE_DIGITS), digits) + 0.0
