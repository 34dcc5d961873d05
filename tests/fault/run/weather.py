"""What befalls the calls of one device, drawn from the run's seed."""

from __future__ import annotations

import random

from tests.fault.line.mishap import Kind, Mishap
from tests.fault.run.drawing import Dealt, Drawn, mishap_for

MOST_KILLS = 2
"""That a device's calls lead to in one run: each costs a start."""

KILLING = (Kind.DOWN, Kind.KILLED_SENDING, Kind.KILLED_AT, Kind.KILLED_SOON)


class Weather:
    """Called with ``push`` or ``pull`` before each call."""

    def __init__(self, drawn: Drawn, chance: random.Random, *, first: Dealt | None) -> None:
        self._drawn = drawn
        self._chance = chance
        self._first = first
        self._kills = 0
        self.fair = False

    def __call__(self, call: str) -> Mishap | None:
        if self.fair:
            return None
        if self._first and self._first.call == call:
            mishap, self._first = self._first.mishap, None
            return mishap
        if self._chance.random() >= self._drawn.rate:
            return None
        kind = self._chance.choice(self._drawn.kinds)
        if kind in KILLING:
            self._kills += 1
            if self._kills > MOST_KILLS:
                return None
        return mishap_for(call, kind, self._chance)
