"""Many devices at once, as on the evening when an outreach team comes back into the network."""

from __future__ import annotations

import threading
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor

from tests.bench.api import Caller
from tests.bench.bench import Bench
from tests.bench.databases import NO_POSTGRES, kinds
from tests.bench.figure import Figure
from tests.bench.loaded import Loaded, loaded
from tests.journeys.people import SURGEON

TITLE = "Devices that all push and pull at once (one server process, 8 threads)"
ROUNDS = 4
PATIENTS = 5
"""Pushed by each device in each round, with an examination each; then it pulls up to the end of the feed."""


def measure(bench: Bench) -> Iterator[Figure | str]:
    for kind in kinds():
        with loaded(kind, bench.scratch, bench.build, records=0) as server:
            yield from _evening(f"{kind}, {bench.devices} devices", server, bench.devices)
    if "PostgreSQL" not in kinds():
        yield NO_POSTGRES


def _evening(name: str, server: Loaded, devices: int) -> Iterator[Figure]:
    callers = [Caller(server, SURGEON) for _ in range(devices)]
    gate = threading.Barrier(devices + 1)

    def evening(caller: Caller) -> tuple[list[float], list[float], int]:
        batches = [caller.written(PATIENTS) for _ in range(ROUNDS)]
        pushes, pulls, after, count = [], [], server.whole, 0
        gate.wait()
        for batch in batches:
            pushes.append(caller.push_batch_ms(batch))
            took_ms, pulled, after = caller.timed_catching_up(after)
            pulls.append(took_ms)
            count += pulled
        return pushes, pulls, count

    with ThreadPoolExecutor(devices) as pool:
        running = [pool.submit(evening, caller) for caller in callers]
        gate.wait()
        started = time.perf_counter()
        found = [each.result() for each in running]
        took_s = time.perf_counter() - started
    sent = devices * ROUNDS * PATIENTS * 2
    # Who finished early has not seen what came later; together with one more pull each has seen everything, once.
    rest = [caller.timed_catching_up(caller.reached)[1] for caller in callers]
    assert {count + more for (_, _, count), more in zip(found, rest, strict=True)} == {sent}
    pushes = [value for each, _, _ in found for value in each]
    pulls = [value for _, each, _ in found for value in each]
    yield Figure(what=f"{name}: {sent:,} records in, {sum(c for _, _, c in found):,} out", unit="s", values=[took_s])
    yield Figure(what=f"{name}: records in a second", unit="", values=[sent / took_s])
    for what, values in (("a push of 10 records", pushes), ("catching up", pulls)):
        yield Figure(what=f"{name}: {what}", unit="ms", values=values)
        yield Figure(what=f"{name}: {what}, the slowest of twenty", unit="ms", values=[_high(values)])
    yield Figure(what=f"{name}: the most memory held", unit="MB", values=[server.most_memory_mb])


def _high(values: list[float]) -> float:
    """The 95th percentile."""
    return sorted(values)[int(0.95 * (len(values) - 1))]
