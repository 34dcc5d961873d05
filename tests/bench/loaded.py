"""The production server on a ledger of a given length, with what it uses of the machine."""

from __future__ import annotations

import json
import re
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from clinic.build.folders import folders
from tests.bench.databases import Database, fresh
from tests.journeys.site.server import ADDRESS, Server


@dataclass(frozen=True, kw_only=True)
class Loaded:
    """A running server; the cursors stand at the end of its feed."""

    port: int
    process: int
    inserted_s: float
    whole: str
    theatre: str

    @property
    def most_memory_mb(self) -> float:
        """The most that the server's process ever held (Linux)."""
        status = Path(f"/proc/{self.process}/status").read_text(encoding="utf-8")
        return int(re.findall(r"VmHWM:\s+(\d+) kB", status)[0]) / 1000


@contextmanager
def loaded(kind: str, scratch: Path, build: Path, *, records: int) -> Iterator[Loaded]:
    """The demo clinic's people, and so many records more."""
    with fresh(kind, scratch, build) as database:
        told = _seeded(database, records)
        server = OnDatabase(database, build)
        server.start()
        try:
            yield Loaded(port=server.port, process=server.pid, inserted_s=told.pop("took_s"), **told)
        finally:
            server.stop()
        assert "Traceback" not in server.log, server.log


class OnDatabase(Server):
    """A server on either database."""

    def __init__(self, database: Database, build: Path) -> None:
        super().__init__(state=database.state, build=build)
        self.variables = database.variables

    @property
    def pid(self) -> int:
        assert self._process
        return self._process.pid

    def start(self) -> None:
        command = (sys.executable, "-m", "waitress", f"--listen={ADDRESS}:{self.port}", "--threads=8")
        with (self.state / "server.log").open("ab") as log:
            self._process = subprocess.Popen(
                (*command, "clinic.wsgi:application"),
                cwd=folders().project,
                env=self.variables,
                stdout=log,
                stderr=subprocess.STDOUT,
            )
        self._wait_for_answer()


def _seeded(database: Database, records: int) -> dict[str, object]:
    done = subprocess.run(
        (sys.executable, "-m", "tests.bench.seeding", str(records)),
        cwd=folders().project,
        env=database.variables,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)
