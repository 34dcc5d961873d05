"""Comparisons with a threshold that no rounding in the last binary place can tip, so every device decides alike."""

from __future__ import annotations

HAIR = 1e-6
"""Far below anything that can be measured, far above what arithmetic loses."""


def reaches(value: float, threshold: float) -> bool:
    """Whether ``value`` is at or above ``threshold``."""
    return value >= threshold - HAIR


def exceeds(value: float, threshold: float) -> bool:
    """Whether ``value`` is above ``threshold``."""
    return value > threshold + HAIR


def same(one: float, other: float) -> bool:
    """Whether two figures are the same figure."""
    return abs(one - other) <= HAIR
