"""Places at which a server dies: a request with ``X-Bench-Die: PLACE`` kills its process, -9, when it gets there.

A kill from outside lands where it lands; these are the places at which one must have landed.
"""

from __future__ import annotations

import os
import signal
import threading
from collections.abc import Callable, Iterable
from typing import Any

import clinic.api.pull.views
import clinic.ledger.commands
import clinic.sync.push

_doomed = threading.local()


def watched(application: Callable[..., Iterable[bytes]]) -> Callable[..., Iterable[bytes]]:
    """The application, which minds the header."""
    _after(clinic.ledger.commands, "lock_feed", "locked")
    _after(clinic.ledger.commands, "append", "inserted")
    _after(clinic.sync.push, "_settle_together", "committed")
    _after(clinic.api.pull.views, "pull", "read")

    def call(environ: dict[str, Any], start_response: Callable[..., Any]) -> Iterable[bytes]:
        _doomed.place = environ.get("HTTP_X_BENCH_DIE")
        _reach("reading")
        answer = application(environ, start_response)
        _reach("answered")
        return answer

    return call


def _after(module: Any, name: str, place: str) -> None:
    original = getattr(module, name)

    def wrapped(*args: Any, **named: Any) -> Any:
        result = original(*args, **named)
        _reach(place)
        return result

    setattr(module, name, wrapped)


def _reach(place: str) -> None:
    if getattr(_doomed, "place", None) == place:
        os.kill(os.getpid(), signal.SIGKILL)
