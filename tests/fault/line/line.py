"""The line between a device and the site: HTTP over a socket of its own, with one mishap a call if so drawn."""

from __future__ import annotations

import http.client
import json
import socket
import threading
import time
from collections import Counter
from dataclasses import dataclass, field
from typing import Any

from tests.fault.line.mishap import Kind, Mishap
from tests.fault.site.site import Site
from tests.journeys.site.server import ADDRESS

PATIENCE_S = 60
LONGEST_KILL_S = 0.02
"""A push takes a few milliseconds: a kill within these lands before, in and after it."""
PIECES = 6
PIECE_S = 0.001


class Lost(Exception):
    """There was no answer, whatever became of the request."""


@dataclass(frozen=True)
class Answer:
    status: int
    body: dict[str, Any]
    cookies: dict[str, str]

    @property
    def code(self) -> str:
        """Of a refusal."""
        return self.body["errors"][0]["code"]


@dataclass(frozen=True, kw_only=True)
class Call:
    method: str
    path: str
    headers: dict[str, str]
    body: bytes = b""

    def written(self, **more: str) -> bytes:
        """As it goes over the line."""
        headers = {"Host": ADDRESS, "Connection": "close", "Content-Length": str(len(self.body))} | self.headers | more
        lines = [f"{self.method} {self.path} HTTP/1.1", *(f"{name}: {value}" for name, value in headers.items())]
        return "\r\n".join([*lines, "", ""]).encode() + self.body


@dataclass
class Line:
    """``happened`` counts what befell its calls, by kind and place."""

    site: Site
    happened: Counter[str] = field(default_factory=Counter)
    _held_up: list[tuple[socket.socket, bytes]] = field(default_factory=list)
    _counting: threading.Lock = field(default_factory=threading.Lock)

    def send(self, call: Call, mishap: Mishap | None = None) -> Answer:
        """The server's answer, or Lost."""
        try:
            if mishap is None:
                return self._whole(call)
            self.note(mishap.kind)
            return self._befallen(call, mishap)
        except (OSError, http.client.HTTPException) as error:
            raise Lost from error

    def note(self, what: str) -> None:
        with self._counting:
            self.happened[what] += 1

    def deliver_held_up(self) -> None:
        """What was held up arrives now, and nobody waits for its answer any more."""
        with self._counting:
            arriving, self._held_up = self._held_up, []
        for connection, rest in arriving:
            try:
                connection.sendall(rest)
                _read(connection)
            except (OSError, http.client.HTTPException):
                self.note("held up, and its server was gone")
            finally:
                connection.close()

    def _befallen(self, call: Call, mishap: Mishap) -> Answer:  # noqa: C901 - one case for each kind
        written = call.written()
        cut = max(1, min(len(written) - 1, int(len(written) * mishap.share)))
        match mishap.kind:
            case Kind.REQUEST_LOST:
                raise Lost
            case Kind.REQUEST_CUT:
                with self._connected() as connection:
                    connection.sendall(written[:cut])
                raise Lost
            case Kind.REPLY_LOST:
                self._whole(call)
                raise Lost
            case Kind.REPLY_CUT:
                with self._connected() as connection:
                    connection.sendall(written)
                    connection.recv(1 + int(200 * mishap.share))
                raise Lost
            case Kind.SENT_TWICE:
                return self._twice(written)
            case Kind.OVERTAKEN:
                connection = self._connected()
                connection.sendall(written[:-1])
                with self._counting:
                    self._held_up.append((connection, written[-1:]))
                raise Lost
            case Kind.SLOW:
                return self._slow(written)
            case Kind.DOWN:
                return self._while_down(call)
            case Kind.KILLED_SENDING:
                with self._connected() as connection:
                    connection.sendall(written[:cut])
                    self.site.kill_and_start()
                raise Lost
            case Kind.KILLED_AT:
                return self._doomed(call, mishap.place)
            case Kind.KILLED_SOON:
                return self._killed_soon(written, mishap.share * LONGEST_KILL_S)

    def _whole(self, call: Call) -> Answer:
        with self._connected() as connection:
            connection.sendall(call.written())
            return _read(connection)

    def _twice(self, written: bytes) -> Answer:
        with self._connected() as first, self._connected() as second:
            first.sendall(written)
            second.sendall(written)
            _read(second)
            return _read(first)

    def _slow(self, written: bytes) -> Answer:
        size = -(-len(written) // PIECES)
        with self._connected() as connection:
            for start in range(0, len(written), size):
                connection.sendall(written[start : start + size])
                time.sleep(PIECE_S)
            return _read(connection)

    def _while_down(self, call: Call) -> Answer:
        generation = self.site.kill()
        try:
            return self._whole(call)
        finally:
            self.site.follow(generation)

    def _doomed(self, call: Call, place: str) -> Answer:
        generation = self.site.generation
        try:
            with self._connected() as connection:
                connection.sendall(call.written(**{"X-Bench-Die": place}))
                return _read(connection)
        except (OSError, http.client.HTTPException):
            if self.site.generation == generation:
                self.note(f"{call.method} {place}")
            self.site.kill_and_start()  # whichever it was that died of it
            raise

    def _killed_soon(self, written: bytes, after_s: float) -> Answer:
        with self._connected() as connection:
            connection.sendall(written)
            time.sleep(after_s)
            self.site.kill_and_start()
            return _read(connection)

    def _connected(self) -> socket.socket:
        return socket.create_connection((ADDRESS, self.site.port), timeout=PATIENCE_S)


def _read(connection: socket.socket) -> Answer:
    """The answer, whole or not at all."""
    response = http.client.HTTPResponse(connection)
    try:
        response.begin()
        body = response.read()
        cookies = dict(
            value.split(";")[0].split("=", 1) for value in response.headers.get_all("Set-Cookie", failobj=[])
        )
        return Answer(response.status, json.loads(body), cookies)
    finally:
        response.close()
