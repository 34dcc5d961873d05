"""The site in the hands of a test: the real server in a process of its own, killed and started as the test wants."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tempfile
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from clinic.build.folders import folders
from tests.fault.site.database import memory_folder, new_database
from tests.journeys.site.server import free_port


class Site:
    """Speaks with the nursery, one order at a time, from any thread."""

    def __init__(self, *, state: Path, url: str) -> None:
        self.port = free_port()
        self.state = state
        self.kills = 0
        self.generation = 0
        self._one_at_a_time = threading.RLock()
        self._wishes: dict[str, Any] = {}
        with (state / "server.log").open("ab") as log:
            self._nursery = subprocess.Popen(
                (sys.executable, "-m", "tests.fault.site.nursery", str(self.port)),
                cwd=folders().project,
                env=_environment(state, url),
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                stderr=log,
                text=True,
            )

    def wait_until_ready(self) -> None:
        """The site is imported, its tables are made."""
        self._answer()

    @property
    def log(self) -> str:
        return (self.state / "server.log").read_text()

    def start(self, **wishes: Any) -> None:
        """A server that takes calls from now on; what it shall be like holds for its successors too."""
        with self._one_at_a_time:
            self._wishes = wishes
            self._start()

    def want(self, **wishes: Any) -> None:
        """A server that is like this, started only if the present one is not."""
        with self._one_at_a_time:
            if not self.generation or self._wishes != wishes:
                self.start(**wishes)

    def kill(self) -> int:
        """Which it was that was killed, to be told to :meth:`follow`."""
        with self._one_at_a_time:
            self._order("kill")
            self.kills += 1
            return self.generation

    def kill_and_start(self) -> None:
        """The power was away for a moment."""
        with self._one_at_a_time:
            self.kill()
            self._start()

    def follow(self, generation: int) -> bool:
        """A server in the place of that one, which is dead, unless somebody was faster."""
        with self._one_at_a_time:
            if self.generation != generation:
                return False
            self._start()
            return True

    def restore(self, backup: Path) -> None:
        """As an operator does: the server stopped, the backup put in the database's place, the server started."""
        with self._one_at_a_time:
            self._order("kill")
            self._order("restore", path=str(backup))
            self._start()

    def back_up(self, backup: Path) -> None:
        self._order("back_up", path=str(backup))

    def fill_disk(self) -> None:
        self._order("fill_disk")

    def free_disk(self) -> None:
        self._order("free_disk")

    def clinic(self, people: list[dict[str, Any]]) -> dict[str, Any]:
        """A new clinic; see :mod:`tests.fault.site.people`."""
        return self._order("clinic", people=people)

    def revoke(self, device: str) -> None:
        """As an administrator does."""
        self._order("revoke", device=device)

    def books(self, clinic: str) -> dict[str, Any]:
        """What its database holds; see :mod:`tests.fault.site.books`."""
        return self._order("books", clinic=clinic)

    def close(self) -> None:
        self._nursery.stdin.close()
        self._nursery.wait(20)
        self._nursery.stdout.close()

    def _start(self) -> None:
        self._order("start", **self._wishes)
        self.generation += 1

    def _order(self, name: str, **named: Any) -> Any:
        with self._one_at_a_time:
            self._nursery.stdin.write(json.dumps({"order": name, **named}) + "\n")
            self._nursery.stdin.flush()
            return self._answer()

    def _answer(self) -> Any:
        line = self._nursery.stdout.readline()
        said = json.loads(line) if line else {"failed": f"the nursery ended:\n{self.log}"}
        if "failed" in said:
            raise AssertionError(said["failed"])
        return said["done"]


@contextmanager
def new_sites(count: int) -> Iterator[list[Site]]:
    """Sites with databases of their own, made at the same time."""
    with tempfile.TemporaryDirectory(prefix="fault-", dir=memory_folder()) as folder:
        yield from _made(Path(folder), count, [])


def _made(folder: Path, count: int, sites: list[Site]) -> Iterator[list[Site]]:
    if len(sites) == count:
        for site in sites:
            site.wait_until_ready()
        yield sites
        return
    state = folder / f"site{len(sites)}"
    state.mkdir()
    with new_database(state) as url:
        site = Site(state=state, url=url)
        try:
            yield from _made(folder, count, [*sites, site])
        finally:
            site.close()


def _environment(state: Path, url: str) -> dict[str, str]:
    """Production's code on this machine alone; the pace is not what is tested here."""
    own = {
        "CLINIC_MODE": "loopback",
        "CLINIC_STATE": str(state),
        "CLINIC_BUILD": str(state),
        "CLINIC_LOG_LEVEL": "ERROR",
        "CLINIC_SYNC_PER_MINUTE": "1000000",
        "DATABASE_URL": url,
        "DJANGO_SETTINGS_MODULE": "clinic.settings",
    }
    return os.environ | own
