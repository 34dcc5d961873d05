"""Results of 100, 1,000 and 10,000 operations counted and drawn, and operations read into results, 25 at a time."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from tests.bench.bench import Bench
from tests.bench.figure import Figure, times
from tests.bench.measures.engine import Question, on_the_phone, on_the_server
from tests.fixtures.demo.two_years.told import of_kind, reported
from tests.planner.audit.generated import results

TITLE = "The audit, on the server and on the phone"
SIZES = (100, 1_000, 10_000)
AIMS_MS = {1_000: 2_000.0}
PORTION = 25
"""What the phone reads at a time (static/app/auditing/use-results.js)."""
SPEED = 1
"""Ten thousand on a phone four times slower take the better part of a minute."""


def measure(bench: Bench) -> Iterator[Figure]:
    """A smoke run leaves out the largest."""
    is_smoke = bench.runs == 1
    few = replace(bench, runs=1 if is_smoke else 2, many=1 if is_smoke else 4)
    for size in SIZES[:2] if is_smoke else SIZES:
        counted = Question(
            what=f"{size:,} operations counted", name="audit", payloads=[{"results": results(size), "by": "diagnosis"}]
        )
        yield from _both(few, counted, AIMS_MS.get(size))
    read = Question(
        what=f"{PORTION} operations read, of 1,000: {1_000 // PORTION} times",
        name="outcomes",
        payloads=[{"operations": [reported(each) for each in of_kind("operation")[:PORTION]]}],
    )
    yield from _both(few, read, None)


def _both(bench: Bench, question: Question, aim: float | None) -> Iterator[Figure]:
    server = Figure(what=f"{question.what}, server", unit="ms", values=on_the_server(question, bench.many))
    yield server
    _, again = on_the_phone(bench, SPEED, question)
    yield times("server", replace(again, aim=aim), server)
