"""A processor four times slower, for whole renderer processes.

The browser's own throttle reaches the main thread of a page and neither its workers nor the compiling of WebAssembly,
where the engine spends its time. So each renderer process is stopped for three quarters of the time. What the browser's
other processes do (network, storage) stays as fast as it is.
"""

from __future__ import annotations

import os
import signal
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

RUNNING_S = 0.002
SLOWER = 4
LOOK_AGAIN_S = 0.02
"""A start makes new processes."""


@contextmanager
def slowed(browser_process: int) -> Iterator[None]:
    """Stops and continues the renderers below ``browser_process`` until the block ends."""
    over = threading.Event()
    worker = threading.Thread(target=_stop_and_go, args=(browser_process, over), daemon=True)
    worker.start()
    try:
        yield
    finally:
        over.set()
        worker.join()


def _stop_and_go(browser_process: int, over: threading.Event) -> None:
    found: list[int] = []
    looked = 0.0
    while not over.is_set():
        if time.monotonic() - looked > LOOK_AGAIN_S:
            found = list(_renderers(browser_process))
            looked = time.monotonic()
        _send(found, signal.SIGSTOP)
        time.sleep(RUNNING_S * (SLOWER - 1))
        _send(found, signal.SIGCONT)
        time.sleep(RUNNING_S)


def _send(processes: list[int], word: signal.Signals) -> None:
    for process in processes:
        try:
            os.kill(process, word)
        except ProcessLookupError:
            continue


def _renderers(process: int) -> Iterator[int]:
    for child in _children(process):
        if b"--type=renderer" in _read(Path(f"/proc/{child}/cmdline")):
            yield child
        yield from _renderers(child)


def _children(process: int) -> list[int]:
    return [int(child) for child in _read(Path(f"/proc/{process}/task/{process}/children")).split()]


def _read(path: Path) -> bytes:
    try:
        return path.read_bytes()
    except OSError:
        return b""
