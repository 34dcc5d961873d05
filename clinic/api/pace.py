"""How often a device may push and pull: a brake on an app that runs wild, not a wall.

Counted in this process's memory, so with several processes the limit is that many times higher; whoever attacks from
outside is the proxy's business, and guessing passwords is counted in the database (:mod:`clinic.people.lockout`).
A full refill comes back evenly within a minute; a device that is told to wait is told for how long.
"""

from __future__ import annotations

import threading
import time
from typing import Any, Final

from django.conf import settings
from rest_framework.request import Request
from rest_framework.throttling import BaseThrottle

MOST_KNOWN: Final = 10_000
MINUTE_S: Final = 60.0


class Buckets:
    """What is left for each name: calls refill evenly."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._left: dict[str, tuple[float, float]] = {}

    def wait_s(self, name: str, *, per_minute: int, now_s: float) -> float:
        """Take one call; 0 if it may go on, else how many seconds until it may."""
        with self._lock:
            left, at = self._left.pop(name, (float(per_minute), now_s))
            left = min(per_minute, left + (now_s - at) * per_minute / MINUTE_S)
            wait = 0.0 if left >= 1 else (1 - left) * MINUTE_S / per_minute
            self._left[name] = (left if wait else left - 1, now_s)
            if len(self._left) > MOST_KNOWN:
                del self._left[next(iter(self._left))]  # the one not heard from for longest
            return wait


BUCKETS: Final = Buckets()


class SyncPace(BaseThrottle):
    """At most ``SYNC_PER_MINUTE`` pushes, and as many pulls, of one session."""

    waiting = 0.0

    def allow_request(self, request: Request, view: Any) -> bool:  # noqa: ANN401
        """Whether the call goes on."""
        name = f"{type(view).__name__} {request.session.session_key}"
        self.waiting = BUCKETS.wait_s(name, per_minute=settings.SYNC_PER_MINUTE, now_s=time.monotonic())
        return not self.waiting

    def wait(self) -> float:
        """Seconds."""
        return self.waiting
