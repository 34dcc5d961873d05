"""What the server adds to the time that the database needs for the bare rows."""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Iterator

from clinic.build.folders import folders
from tests.bench.bench import Bench
from tests.bench.databases import NO_POSTGRES, fresh, kinds
from tests.bench.figure import Figure, times

TITLE = "Records into the database, in batches of 200, beside the bare rows"
AIM = 2.0
"""Times the floor, for the ledger's own writing."""


def measure(bench: Bench) -> Iterator[Figure | str]:
    for kind in kinds():
        found: dict[str, list[float]] = {"bare": [], "ledger": [], "whole": []}
        for _ in range(min(bench.runs, 3)):
            with fresh(kind, bench.scratch, bench.build) as database:
                for what, took_ms in _timed(dict(database.variables), bench.compared).items():
                    found[what].append(took_ms)
        name = f"{kind}, {bench.compared:,} records"
        floor = Figure(what=f"{name}: bare rows", unit="ms", values=found["bare"])
        yield floor
        written = Figure(what=f"{name}: by the ledger", unit="ms", values=found["ledger"], aim=AIM * floor.median)
        yield times("the floor", written, floor)
        yield times("the floor", Figure(what=f"{name}: by a push", unit="ms", values=found["whole"]), floor)
    if "PostgreSQL" not in kinds():
        yield NO_POSTGRES


def _timed(variables: dict[str, str], count: int) -> dict[str, float]:
    done = subprocess.run(
        (sys.executable, "-m", "tests.bench.inserting", str(count)),
        cwd=folders().project,
        env=variables,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)
