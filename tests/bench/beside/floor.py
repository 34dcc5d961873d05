"""The least that a server can do with a batch: take one compressed request, read it, insert it, answer.

Run as ``python -m tests.bench.beside.floor PORT DATABASE``; it seals nothing, judges nothing and knows nobody.
"""

from __future__ import annotations

import gzip
import json
import sqlite3
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

from tests.bench.beside.answering import wait_for_answer
from tests.journeys.site.server import ADDRESS, free_port


class Floor(BaseHTTPRequestHandler):
    """An empty page, and a place for records."""

    protocol_version = "HTTP/1.1"

    def do_GET(self) -> None:
        """The empty page."""
        self._answer(b"<!doctype html><title>floor</title>", "text/html")

    def do_POST(self) -> None:
        """Every record once more, with its place."""
        sent = json.loads(gzip.decompress(self.rfile.read(int(self.headers["Content-Length"]))))
        rows = [(each["_id"], json.dumps(each)) for each in sent]
        with sqlite3.connect(sys.argv[2]) as database:
            database.execute("CREATE TABLE IF NOT EXISTS rows (id TEXT PRIMARY KEY, body TEXT)")
            database.executemany("INSERT INTO rows VALUES (?, ?)", rows)
        told = json.dumps([{"id": row[0], "position": place} for place, row in enumerate(rows, start=1)])
        self._answer(gzip.compress(told.encode()), "application/json", encoding="gzip")

    def log_message(self, *_: object) -> None:
        """Nobody reads it."""

    def _answer(self, body: bytes, kind: str, *, encoding: str = "identity") -> None:
        self.send_response(200)
        for name, value in (("Content-Type", kind), ("Content-Length", len(body)), ("Content-Encoding", encoding)):
            self.send_header(name, str(value))
        self.end_headers()
        self.wfile.write(body)


@contextmanager
def floor(scratch: Path) -> Iterator[int]:
    """The port that it listens on."""
    port = free_port()
    command = (sys.executable, "-m", __name__, str(port), str(scratch / "floor.sqlite3"))
    with (scratch / "floor.log").open("ab") as log:
        process = subprocess.Popen(command, stdout=log, stderr=log)
    try:
        wait_for_answer(port, process, scratch / "floor.log")
        yield port
    finally:
        process.terminate()
        process.wait()


if __name__ == "__main__":
    ThreadingHTTPServer((ADDRESS, int(sys.argv[1])), Floor).serve_forever()
