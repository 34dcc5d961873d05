"""What ``measures/beside_pouchdb.py`` compares with: PouchDB with its own Express server, and the floor (``floor``).

PouchDB and Express are no part of the product: npm brings them into the scratch folder when the measurement runs.
"""

from __future__ import annotations

import shutil
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from tests.bench.beside.answering import NotHere, wait_for_answer
from tests.journeys.site.server import free_port

PACKAGES = ("pouchdb@9.0.0", "express-pouchdb@4.2.0", "express@4.21.2")
INSTALL_LIMIT_S = 300


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
        wait_for_answer(port, process, folder / "server.log")
        yield port
    finally:
        process.terminate()
        process.wait()
