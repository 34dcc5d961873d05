"""PouchDB and its own Express server, for the comparison that ``measures/beside_pouchdb.py`` makes.

They are no part of the product: npm brings them into the scratch folder when the measurement runs.
"""

from __future__ import annotations

import http.client
import shutil
import subprocess
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from tests.journeys.site.server import ADDRESS, free_port

PACKAGES = ("pouchdb@9.0.0", "express-pouchdb@4.2.0", "express@4.21.2")
INSTALL_LIMIT_S = 300
START_LIMIT_S = 60


class NotHere(Exception):
    """Why it cannot be compared with here."""


def install(scratch: Path) -> Path:
    """The folder with the packages; NotHere where the registry does not answer."""
    folder = scratch / "beside"
    folder.mkdir()
    (folder / "data").mkdir()
    (folder / "package.json").write_text('{"private": true}', encoding="utf-8")
    npm = shutil.which("npm")
    if npm is None:
        raise NotHere("npm is missing")
    try:
        done = subprocess.run(
            (npm, "install", "--no-audit", "--no-fund", *PACKAGES),
            cwd=folder,
            capture_output=True,
            text=True,
            timeout=INSTALL_LIMIT_S,
            check=False,
        )
    except subprocess.TimeoutExpired as error:
        raise NotHere("npm did not end in time") from error
    if done.returncode:
        raise NotHere(f"npm could not install it: {done.stderr.strip().splitlines()[-1:]}")
    return folder


@contextmanager
def running(folder: Path) -> Iterator[int]:
    """The port that its server listens on."""
    port = free_port()
    script = Path(__file__).with_name("server.cjs")
    node = shutil.which("node") or "node"
    with (folder / "server.log").open("ab") as log:
        process = subprocess.Popen((node, str(script), str(port), str(folder)), stdout=log, stderr=log)
    try:
        _wait_for_answer(port, process, folder)
        yield port
    finally:
        process.terminate()
        process.wait()


def _wait_for_answer(port: int, process: subprocess.Popen[bytes], folder: Path) -> None:
    limit = time.monotonic() + START_LIMIT_S
    while time.monotonic() < limit:
        if process.poll() is not None:
            raise NotHere(f"its server ended: {(folder / 'server.log').read_text()[-300:]}")
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
