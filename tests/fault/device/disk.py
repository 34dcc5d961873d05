"""A device's storage: each change is written whole or not at all, and the device may die just before or just after."""

from __future__ import annotations

import random
import threading
from collections.abc import Callable
from typing import Any

from tests.fault.device.stored import Stored


class Killed(Exception):
    """The app was killed at a step. What it had stored is there when it is opened again."""


class Disk:
    """Shared by all tabs of a device; ``peril`` (0 to 1) is how likely a step is the app's last."""

    def __init__(self, chance: random.Random) -> None:
        self.stored = Stored()
        self.peril = 0.0
        self.deaths = 0
        self._chance = chance
        self._one_at_a_time = threading.Lock()

    def change(self, step: Callable[..., Stored], *args: Any, **named: Any) -> Stored:
        """``step(stored, ...)`` in one transaction."""
        with self._one_at_a_time:
            self._risk()
            self.stored = step(self.stored, *args, **named)
            self._risk()
            return self.stored

    def steps_to_live(self, most: int, *, smaller: int = 1) -> int | None:
        """After how many steps the app dies, if within so many: for an app that takes ``smaller`` ones elsewhere."""
        return next((steps for steps in range(most) if self._chance.random() < self.peril / smaller), None)

    def _risk(self) -> None:
        if self._chance.random() < self.peril:
            self.deaths += 1
            raise Killed
