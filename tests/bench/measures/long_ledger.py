"""Whether a clinic grows slower with its years: the same calls on ledgers of very different lengths."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from tests.bench.api import Caller
from tests.bench.bench import Bench
from tests.bench.databases import NO_POSTGRES, kinds
from tests.bench.figure import Figure, times
from tests.bench.loaded import Loaded, loaded
from tests.journeys.people import SURGEON, THEATRE

TITLE = "A long ledger (records of 1.5 kB, 200 a day up to now), plain callers"
AIM = 2.0
"""Times what the shortest ledger takes: what a caught-up device waits for must not grow."""
OF_A_FORTNIGHT = {"theatre: a pull after somebody's push", "theatre: everything, from the beginning"}
"""These look at the signatures of THEATRE_DAYS, 2,800 records here: the shortest ledger does not have as many."""


@dataclass
class Times:
    """Milliseconds of each run on one ledger, by what was asked."""

    inserted_s: float = 0.0
    memory_mb: float = 0.0
    asked: dict[str, list[float]] = field(default_factory=dict)


def measure(bench: Bench) -> Iterator[Figure | str]:
    for kind in kinds():
        shortest: Times | None = None
        for records in bench.ledgers:
            yield f"{kind}: a ledger of {records:,} records is filled"
            with loaded(kind, bench.scratch, bench.build, records=records) as server:
                found = _asked(bench, server)
            shortest = shortest or found
            yield from _figures(f"{kind}, {records:,} records", found, shortest)
    if "PostgreSQL" not in kinds():
        yield NO_POSTGRES


def _asked(bench: Bench, server: Loaded) -> Times:
    surgeon, theatre = Caller(server, SURGEON), Caller(server, THEATRE)
    asked = {
        "a pull that finds nothing new": lambda: surgeon.timed_pull_ms(server.whole),
        "theatre: a pull that finds nothing new": lambda: theatre.timed_pull_ms(server.theatre),
        "the first page of 500": lambda: surgeon.timed_pull_ms(""),
        "one new patient pushed": surgeon.push_one_ms,
        "theatre: a pull after somebody's push": lambda: theatre.timed_pull_ms(server.theatre),
        "theatre: everything, from the beginning": lambda: theatre.timed_pull_ms(""),
    }
    found = Times(inserted_s=server.inserted_s)
    for what, ask in asked.items():
        ask()
        found.asked[what] = [ask() for _ in range(bench.many)]
    found.memory_mb = server.most_memory_mb
    return found


def _figures(name: str, found: Times, shortest: Times) -> Iterator[Figure]:
    yield Figure(what=f"{name}: inserted past the site", unit="s", values=[found.inserted_s])
    for what, values in found.asked.items():
        first = Figure(what=what, unit="ms", values=shortest.asked[what])
        aim = None if what in OF_A_FORTNIGHT else AIM * first.median
        yield times("the shortest", Figure(what=f"{name}: {what}", unit="ms", values=values, aim=aim), first)
    first = Figure(what="", unit="MB", values=[shortest.memory_mb])
    memory = Figure(what=f"{name}: the most memory held", unit="MB", values=[found.memory_mb], aim=AIM * first.median)
    yield times("the shortest", memory, first)
