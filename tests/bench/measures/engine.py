"""The same questions to the same engine: in the server's Python, and in the phone's worker."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import dataclass
from functools import partial
from typing import Any

from playwright.sync_api import Page

from planner.desk import answer
from tests.bench.bench import SPEEDS, Bench
from tests.bench.figure import Figure, timed_ms, times
from tests.bench.page import MARKS, mark_ms, module
from tests.journeys.people import DEMO

TITLE = "The engine, on the server and on the phone"
ASK = """
async ({ door, name, payloads, runs }) => {
  const { ask } = await import(door);
  const once = async (payload) => {
    const started = performance.now();
    await ask(name, payload);
    return performance.now() - started;
  };
  const first = await once(payloads[0]);
  const values = [];
  for (let run = 0; run < runs; run += 1) for (const payload of payloads) values.push(await once(payload));
  return { first, values };
}
"""


@dataclass(frozen=True, kw_only=True)
class Question:
    """What is asked, of each of several cases in turn."""

    what: str
    name: str
    payloads: list[dict[str, Any]]


def measure(bench: Bench) -> Iterator[Figure]:
    for question in _questions():
        server = Figure(what=f"{question.what}, server", unit="ms", values=on_the_server(question, bench.many))
        yield server
        for speed in SPEEDS:
            first, again = on_the_phone(bench, speed, question)
            yield first
            yield times("server", again, server)


def _questions() -> Iterator[Question]:
    """Of the demo clinic's plans: their cases, and the cards of those that are signed."""
    records = {record["id"]: record for record in DEMO["records"]}
    plans = [record for record in DEMO["records"] if record["kind"] == "plan"]
    cases = [{"case": plan["body"]["case"]} for plan in plans]
    yield Question(what=f"options proposed, {len(cases)} cases", name="propose", payloads=cases)
    cards = []
    for signature in (record for record in DEMO["records"] if record["kind"] == "signature"):
        plan = records[signature["body"]["plan_id"]]
        patient = records[plan["body"]["patient_id"]]
        cards.append({"patient": patient["body"], "plan": plan["body"], "signature": signature["body"]})
    yield Question(what=f"PDF drawn, {len(cards)} cards", name="card_pdf", payloads=cards)


def on_the_server(question: Question, runs: int) -> list[float]:
    requests = [json.dumps({"ask": question.name, **payload}) for payload in question.payloads]
    return [value for request in requests for value in timed_ms(partial(answer, request), runs=runs)]


def on_the_phone(bench: Bench, speed: int, question: Question) -> tuple[Figure, Figure]:
    firsts, values = [], []
    for _ in range(bench.runs):
        page = page_with_engine(bench)
        asked = {
            "door": module(page, "engine/engine.js"),
            "name": question.name,
            "payloads": question.payloads,
            "runs": max(1, bench.many // bench.runs),
        }
        with bench.at(speed):
            found = page.evaluate(ASK, asked)
        firsts.append(found["first"])
        values += found["values"]
        page.context.close()
    first = Figure(what=f"{question.what}, phone, {speed}x: the very first", unit="ms", values=firsts)
    return first, Figure(what=f"{question.what}, phone, {speed}x", unit="ms", values=values)


def page_with_engine(bench: Bench) -> Page:
    page = bench.browser.new_context().new_page()
    page.add_init_script(MARKS)
    page.goto(bench.server.address)
    mark_ms(page, "engine ready")
    return page
