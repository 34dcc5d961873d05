"""The regularized incomplete beta function by its continued fraction, and its inverse.

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
    """The x at which I_x(a, b) is ``probability``: by Newton's steps, halving instead where one leaves the bracket."""
    low, high, x = 0.0, 1.0, a / (a + b)
    scale = lgamma(a + b) - lgamma(a) - lgamma(b)
    for _ in range(HALVINGS):
        beyond = incomplete_beta(x, a, b) - probability
        low, high = (x, high) if beyond < 0 else (low, x)
        slope = exp((a - 1) * log(x) + (b - 1) * log1p(-x) + scale)
        step = beyond / slope if slope > TINY else 1.0
        after = x - step if low < x - step < high else (low + high) / 2
        if after in (low, high) or abs(after - x) <= ENOUGH * x:
            return after
        x = after
    return x
