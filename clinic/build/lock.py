"""One builder at a time on a checkout, across processes; a builder that dies lets go by itself."""

from __future__ import annotations

import os
import time
from contextlib import contextmanager
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from pathlib import Path

if os.name == "nt":
    import msvcrt

    def _take(handle: int) -> None:
        msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
else:
    import fcntl

    def _take(handle: int) -> None:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)


@contextmanager
def only_builder(path: Path, *, waiting: Callable[[], None] = lambda: None) -> Iterator[None]:
    """Hold the lock file at ``path``; calls ``waiting`` once if another process holds it first.

    The operating system drops the lock with the process, so there is no stale lock to clean up.
    """
    path.parent.mkdir(parents=True, exist_ok=True)
    handle = os.open(path, os.O_RDWR | os.O_CREAT)
    told = False
    try:
        while True:
            try:
                _take(handle)
                break
            except OSError:
                if not told:
                    waiting()
                    told = True
                time.sleep(0.2)
        yield
    finally:
        os.close(handle)
