"""A processor four times slower, for whole renderer processes.

The browser's own throttle reaches the main thread of a page and neither its workers nor the compiling of WebAssembly,
where the engine spends its time. So a process of ours stops the renderers after every few milliseconds of their work
and works itself, at nothing, for three times as long as they did: in processor time, so that it holds on a busy machine
too, where both wait for their turn. Whatever a renderer does not work for (network, storage) stays as fast as it is.
The group ``clock`` measures what was reached, in a page and in a worker.
"""

from __future__ import annotations

import os
import signal
import subprocess
import sys
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
    """Slows the renderers below ``browser_process`` down until the block ends."""
    brake = subprocess.Popen((sys.executable, "-m", __name__, str(browser_process)))
    try:
        yield
    finally:
        brake.terminate()
        brake.wait()
        _send(list(_renderers(browser_process)), signal.SIGCONT)


def brake(browser_process: int) -> None:
    """Stop, work at nothing, continue; until this process is ended."""
    found: list[int] = []
    looked = 0.0
    while True:
        if time.monotonic() - looked > LOOK_AGAIN_S:
            found = list(_renderers(browser_process))
            looked = time.monotonic()
            _send(found, signal.SIGSTOP)
        # Looked at while they stand still: this process may have to wait for its turn at any moment.
        before = {process: _used_s(process) for process in found}
        started = time.monotonic()
        _send(found, signal.SIGCONT)
        time.sleep(RUNNING_S)
        _send(found, signal.SIGSTOP)
        passed_s = time.monotonic() - started
        # Two threads of one renderer at once do not make it twice as slow.
        used_s = min(passed_s, max((_used_s(process) - before[process] for process in found), default=0.0))
        _work_at_nothing(used_s * (SLOWER - 1))


def _work_at_nothing(for_s: float) -> None:
    until = time.thread_time() + for_s
    while time.thread_time() < until:
        pass


def _used_s(process: int) -> float:
    """The processor time of all threads of the process, by the clock that Linux keeps for it."""
    try:
        return time.clock_gettime((~process << 3) | 2)
    except OSError:
        return 0.0


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


if __name__ == "__main__":
    brake(int(sys.argv[1]))
