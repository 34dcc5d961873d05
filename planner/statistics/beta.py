"""The regularized incomplete beta function by its continued fraction, and its inverse by bisection.

Formulae: NIST Digital Library of Mathematical Functions, 8.17.4 (symmetry) and 8.17.22 (continued fraction).
"""

from __future__ import annotations

from math import exp, lgamma, log, log1p
from typing import Final

ENOUGH: Final = 1e-15
TINY: Final = 1e-300
MOST_TERMS: Final = 10_000
HALVINGS: Final = 200


def incomplete_beta(x: float, a: float, b: float) -> float:
    """I_x(a, b) for 0 <= x <= 1 and a, b > 0."""
    if x <= 0:
        return 0.0
    if x >= 1:
        return 1.0
    front = exp(a * log(x) + b * log1p(-x) + lgamma(a + b) - lgamma(a) - lgamma(b))
    if x < (a + 1) / (a + b + 2):
        return front * _fraction(x, a, b) / a
    return 1 - front * _fraction(1 - x, b, a) / b


def _fraction(x: float, a: float, b: float) -> float:
    """The continued fraction, evaluated from the front by the modified method of Lentz."""
    c, d = 1.0, 1 / _not_zero(1 - (a + b) * x / (a + 1))
    value = d
    for m in range(1, MOST_TERMS):
        even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m))
        d, c = 1 / _not_zero(1 + even * d), _not_zero(1 + even / c)
        value *= d * c
        odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1))
        d, c = 1 / _not_zero(1 + odd * d), _not_zero(1 + odd / c)
        value *= d * c
        if abs(d * c - 1) < ENOUGH:
            break
    return value


def _not_zero(figure: float) -> float:
    return figure if abs(figure) > TINY else TINY


def beta_quantile(probability: float, a: float, b: float) -> float:
    """The x at which I_x(a, b) is ``probability``."""
    low, high = 0.0, 1.0
    for _ in range(HALVINGS):
        middle = (low + high) / 2
        if middle in (low, high):
            break
        if incomplete_beta(middle, a, b) < probability:
            low = middle
        else:
            high = middle
    return (low + high) / 2
