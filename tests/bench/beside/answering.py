"""Waiting until a server beside ours answers."""

from __future__ import annotations

import http.client
import subprocess
import time
from pathlib import Path

from tests.journeys.site.server import ADDRESS

START_LIMIT_S = 60


class NotHere(Exception):
    """Why it cannot be compared with here."""


def wait_for_answer(port: int, process: subprocess.Popen[bytes], log: Path) -> None:
    """NotHere where it ends first, or takes too long."""
    limit = time.monotonic() + START_LIMIT_S
    while time.monotonic() < limit:
        if process.poll() is not None:
            raise NotHere(f"its server ended: {log.read_text()[-300:]}")
        caller = http.client.HTTPConnection(ADDRESS, port, timeout=5)
        try:
            caller.request("GET", "/")
            caller.getresponse().read()
        except OSError:
            time.sleep(0.1)
        else:
            return
        finally:
            caller.close()
    raise NotHere("its server did not answer")
