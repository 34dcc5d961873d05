"""The site as it runs in production, in a process of its own that can be stopped, killed and started again."""

import http
import http.client
import json
import os
import random
import shutil
import socket
import sqlite3
import subprocess
import sys
import time
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any
from uuid import UUID

from clinic.build.folders import folders
from tests.journeys.people import CLINIC_ID

ADDRESS = "127.0.0.1"
PORTS = range(20_000, 30_000)
"""Below those that the system gives to outgoing connections: nothing takes the port while the server is down."""
START_LIMIT_S = 60
STOP_LIMIT_S = 20


@dataclass(frozen=True, kw_only=True)
class Received:
    """A record in the server's ledger."""

    id: str
    position: int
    kind: str
    patient: str
    author: str
    body: dict[str, Any]


class Server:
    """Serves ``state`` (database and secret) and ``build`` (the app); both outlive a stop."""

    def __init__(self, *, state: Path, build: Path) -> None:
        self.state = state
        self.build = build
        self.port = free_port()
        self.address = f"http://{ADDRESS}:{self.port}"
        self.more_variables: dict[str, str] = {}
        """Of the environment, from the next start on, beside those that every server has."""
        self._process: subprocess.Popen[bytes] | None = None

    @property
    def log(self) -> str:
        return (self.state / "server.log").read_text()

    def start(self) -> None:
        """Returns when it answers."""
        assert self._process is None, "it runs already"
        command = (sys.executable, "-m", "waitress", f"--listen={ADDRESS}:{self.port}", "--threads=8")
        with (self.state / "server.log").open("ab") as log:
            self._process = subprocess.Popen(
                (*command, "clinic.wsgi:application"),
                cwd=folders().project,
                env={**environment(self.state, self.build), **self.more_variables},
                stdout=log,
                stderr=subprocess.STDOUT,
            )
        self._wait_for_answer()

    def start_if_down(self) -> None:
        """For whoever takes over a server that a journey may have ended."""
        if self._process is None:
            self.start()

    def stop(self) -> None:
        """Ends it as an operator does."""
        self._end(subprocess.Popen.terminate)

    def kill(self) -> None:
        """Ends it as a power cut does."""
        self._end(subprocess.Popen.kill)

    def ledger(self, clinic: str = CLINIC_ID) -> list[Received]:
        """What the database holds of a clinic, in feed order, read past the site's own code."""
        with sqlite3.connect(f"file:{self.state / 'clinic.sqlite3'}?mode=ro", uri=True) as database:
            rows = database.execute(
                "SELECT id, position, kind, patient, author, body FROM ledger_record"
                " WHERE clinic_id = ? ORDER BY position",
                (UUID(clinic).hex,),
            ).fetchall()
        database.close()
        return [
            Received(
                id=str(UUID(own_id)),
                position=position,
                kind=kind,
                patient=str(UUID(patient)),
                author=author,
                body=json.loads(body),
            )
            for own_id, position, kind, patient, author, body in rows
        ]

    def forget_login(self, login: str) -> None:
        """End a session, as its age does."""
        self._change("DELETE FROM django_session WHERE session_key = ?", login)

    def set_role(self, username: str, role: str) -> None:
        """Past the site's own code."""
        self._change(
            "UPDATE people_membership SET role = ? WHERE user_id = (SELECT id FROM people_user WHERE username = ?)",
            role,
            username,
        )

    def _change(self, statement: str, *values: str) -> None:
        with sqlite3.connect(self.state / "clinic.sqlite3", timeout=10) as database:
            changed = database.execute(statement, values)
            assert changed.rowcount == 1
        database.close()

    def _end(self, how: Any) -> None:
        if self._process is None:
            return
        how(self._process)
        self._process.wait(STOP_LIMIT_S)
        self._process = None

    def _say_hello(self) -> None:
        caller = http.client.HTTPConnection(ADDRESS, self.port, timeout=5)
        try:
            caller.request("GET", "/health")
            assert caller.getresponse().status == http.HTTPStatus.OK
        finally:
            caller.close()

    def _wait_for_answer(self) -> None:
        limit = time.monotonic() + START_LIMIT_S
        while time.monotonic() < limit:
            assert self._process
            assert self._process.poll() is None, f"the server ended:\n{self.log}"
            try:
                self._say_hello()
            except OSError:
                time.sleep(0.05)
            else:
                return
        raise AssertionError(f"the server did not answer within {START_LIMIT_S} s:\n{self.log}")


@contextmanager
def running_server(loaded_state: Path, build: Path, folder: Path) -> Iterator[Server]:
    """A server on a copy of ``loaded_state``; it must not have stumbled by the time it is stopped."""
    server = Server(state=Path(shutil.copytree(loaded_state, folder / "state")), build=build)
    server.start()
    try:
        yield server
    finally:
        server.stop()

    assert "Traceback" not in server.log, server.log


def environment(state: Path, build: Path) -> Mapping[str, str]:
    """SQLite in ``state`` whatever database the other tests use."""
    others = {name: value for name, value in os.environ.items() if name != "DATABASE_URL"}
    own = {"CLINIC_MODE": "loopback", "CLINIC_STATE": str(state), "CLINIC_BUILD": str(build)}
    return others | own


def load_demo(state: Path, build: Path) -> None:
    """The newcomer's own command, up to serving: the database made, the demo clinic loaded."""
    command = (sys.executable, "manage.py", "demo", "--no-serve", "--port", str(free_port()))
    done = subprocess.run(
        command,
        cwd=folders().project,
        env=environment(state, build),
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        check=False,
    )
    assert done.returncode == 0, done.stdout.decode()


def free_port() -> int:
    for port in random.sample(PORTS, 100):
        with socket.socket() as probe:
            try:
                probe.bind((ADDRESS, port))
            except OSError:
                continue
            return port
    raise AssertionError("no free port was found")
