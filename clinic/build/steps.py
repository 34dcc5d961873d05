"""Progress that a person can read: one line a step, with its time."""

from __future__ import annotations

import time
from contextlib import contextmanager
from typing import TYPE_CHECKING, TextIO

if TYPE_CHECKING:
    from collections.abc import Iterator


class Steps:
    """Writes ``What is done ... outcome (1.2 s)``; the outcome is ``done`` unless the step says otherwise."""

    def __init__(self, out: TextIO) -> None:
        self._out = out

    @contextmanager
    def step(self, what: str) -> Iterator[Step]:
        """One step; a failure inside ends the line and goes on upwards."""
        self._out.write(f"{what} ...")
        self._out.flush()
        started = time.monotonic()
        step = Step(self._out)
        try:
            yield step
        except BaseException:
            self._out.write(" failed\n")
            raise
        self._out.write(f" {step.outcome} ({time.monotonic() - started:.1f} s)\n")
        self._out.flush()

    def say(self, text: str) -> None:
        """A line of its own."""
        self._out.write(f"{text}\n")
        self._out.flush()


class Step:
    """What a running step may report."""

    def __init__(self, out: TextIO) -> None:
        self._out = out
        self.outcome = "done"

    def progress(self, text: str) -> None:
        """A sign of life on the step's own line."""
        self._out.write(f" {text}")
        self._out.flush()
