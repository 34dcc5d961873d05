"""What a surgeon's own cases say of a table, learned from more and more of them."""

from __future__ import annotations

from collections.abc import Iterator
from random import Random
from typing import Any

from tests.bench.bench import SPEEDS, Bench
from tests.bench.figure import Figure, times
from tests.bench.measures.engine import ASK, Question, on_the_server, page_with_engine
from tests.bench.page import module
from tests.journeys.people import DEMO

TITLE = "Calibration, on the server and on the phone"
LEARNED_FROM = (100, 1_000, 10_000)
SLOWED = 3
"""How many of the questions are asked at 4x too: the longest takes its time there."""
FAMILY = "recess-both-mr"
CASE = next(record["body"]["case"] for record in DEMO["records"] if record["kind"] == "plan")


def measure(bench: Bench) -> Iterator[Figure]:
    questions = sorted(_questions(), key=lambda question: len(str(question.payloads)))
    servers = [
        Figure(what=f"{question.what}, server", unit="ms", values=on_the_server(question, bench.runs))
        for question in questions
    ]
    yield from servers
    for speed in SPEEDS:
        page = page_with_engine(bench)
        asked_now = questions if speed == 1 else questions[:SLOWED]
        for question, server in zip(asked_now, servers, strict=False):
            asked = {"door": module(page, "engine/engine.js"), "name": question.name, "payloads": question.payloads}
            with bench.at(speed):
                found = page.evaluate(ASK, asked | {"runs": bench.runs})
            told = Figure(what=f"{question.what}, phone, {speed}x", unit="ms", values=found["values"])
            yield times("server", told, server)
        page.context.close()


def _questions() -> Iterator[Question]:
    for count in LEARNED_FROM:
        cases = _cases(count)
        yield Question(
            what=f"learned from {count:,} cases", name="calibrate", payloads=[{"family": FAMILY, "cases": cases}]
        )
    families = [{"family": FAMILY, "cases": _cases(LEARNED_FROM[1])}]
    what = f"beside the options of a case, {LEARNED_FROM[1]:,} cases"
    yield Question(what=what, name="suggest", payloads=[{"case": CASE, "families": families}])


def _cases(count: int) -> list[dict[str, Any]]:
    dice = Random(count)  # noqa: S311 -- invented cases
    promised = [20 + 30 * dice.random() for _ in range(count)]
    return [
        {
            "id": f"00000000-0000-7000-8000-{place:012x}",
            "promised_pd": pd,
            "achieved_pd": pd * dice.gauss(0.88, 0.16),
            "days_after": 50,
        }
        for place, pd in enumerate(promised)
    ]
