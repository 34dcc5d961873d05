"""Stands between a browser and a server on this machine and counts what passes: bytes each way, and requests."""

from __future__ import annotations

import re
import socket
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field

from tests.journeys.site.server import ADDRESS

AT_ONCE = 1 << 16
HEAD_ENDS = b"\r\n\r\n"
LENGTH = re.compile(rb"\r\ncontent-length: *(\d+)", re.IGNORECASE)


@dataclass
class Count:
    """Since the last time that somebody took it."""

    up: int = 0
    down: int = 0
    requests: int = 0


@dataclass
class Relay:
    """``address`` is where the browser goes instead."""

    port: int
    count: Count = field(default_factory=Count)
    lock: threading.Lock = field(default_factory=threading.Lock)

    @property
    def address(self) -> str:
        return f"http://{ADDRESS}:{self.port}"

    def taken(self) -> Count:
        """What was counted, and begin at nothing."""
        with self.lock:
            found, self.count = self.count, Count()
        return found


@contextmanager
def relay(to_port: int) -> Iterator[Relay]:
    """Until the block ends."""
    with socket.create_server((ADDRESS, 0)) as door:
        standing = Relay(port=door.getsockname()[1])
        threading.Thread(target=_receive, args=(door, standing, to_port), daemon=True).start()
        yield standing


def _receive(door: socket.socket, standing: Relay, to_port: int) -> None:
    while True:
        try:
            caller, _ = door.accept()
        except OSError:
            return
        server = socket.create_connection((ADDRESS, to_port))
        for side in (caller, server):
            side.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        threading.Thread(target=_up, args=(caller, server, standing), daemon=True).start()
        threading.Thread(target=_down, args=(server, caller, standing), daemon=True).start()


class Heads:
    """Counts the requests of one connection by their heads; bodies, which may be compressed, are passed over by length.

    Browsers send no body here without its length.
    """

    def __init__(self) -> None:
        self._head = b""
        self._body_left = 0

    def begun(self, part: bytes) -> int:
        """How many heads end in the next part of what is sent."""
        found = 0
        while part:
            passed = min(self._body_left, len(part))
            self._body_left -= passed
            self._head += part[passed:]
            head, ends, part = self._head.partition(HEAD_ENDS)
            if not ends:
                break
            told = LENGTH.search(head)
            self._body_left = int(told[1]) if told else 0
            self._head = b""
            found += 1
        return found


def _up(caller: socket.socket, server: socket.socket, standing: Relay) -> None:
    heads = Heads()
    for part in _parts(caller, server):
        begun = heads.begun(part)
        with standing.lock:
            standing.count.up += len(part)
            standing.count.requests += begun


def _down(server: socket.socket, caller: socket.socket, standing: Relay) -> None:
    for part in _parts(server, caller):
        with standing.lock:
            standing.count.down += len(part)


def _parts(source: socket.socket, target: socket.socket) -> Iterator[bytes]:
    try:
        while part := source.recv(AT_ONCE):
            yield part
            target.sendall(part)
        target.shutdown(socket.SHUT_WR)
    except OSError:
        return
