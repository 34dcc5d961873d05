"""Who has the app in a run that has it: the first device, and some of the others."""

from __future__ import annotations

import random
from typing import Any

from tests.fault.device.app.app_device import AppDevice
from tests.fault.device.app.phones import Phones
from tests.fault.device.device import Device


class Mixed:
    """Makes the devices of one run; a second tab is of the same make as the first. ``fault``: see ``broken.mjs``."""

    def __init__(self, phones: Phones, seed: int, *, fault: str = "") -> None:
        self._phones = phones
        self._chance = random.Random(f"{seed}/app")  # noqa: S311
        self._fault = fault
        self._has_app: dict[str, bool] = {}

    def __call__(self, **named: Any) -> Device | AppDevice:
        key = named["device"]["id"]
        if key not in self._has_app:
            self._has_app[key] = not self._has_app or self._chance.random() < 1 / 2
        return AppDevice(self._phones, fault=self._fault, **named) if self._has_app[key] else Device(**named)
