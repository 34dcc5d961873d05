"""A stream of choices from a seed, the same on every machine."""

from __future__ import annotations

from typing import Any


class Dice:
    """A plain linear congruence (multiplier and increment of the 64-bit MMIX generator), so that it can be read."""

    def __init__(self, seed: int) -> None:
        self._state = (seed * 0x9E3779B97F4A7C15 + 1) % 2**64

    def below(self, count: int) -> int:
        self._state = (self._state * 6364136223846793005 + 1442695040888963407) % 2**64
        return (self._state >> 33) % count

    def one_of(self, choices: Any) -> Any:
        choices = tuple(choices)
        return choices[self.below(len(choices))]

    def chance(self, percent: int) -> bool:
        return self.below(100) < percent
