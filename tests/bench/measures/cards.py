"""The card as a value, as a page with its code, read back from the code, and drawn on the screen."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

from planner.desk import answer
from tests.bench.bench import SPEEDS, Bench
from tests.bench.figure import Figure, times
from tests.bench.measures.engine import Question, on_the_phone, on_the_server
from tests.bench.page import module
from tests.journeys.people import DEMO

TITLE = "The card: value, page with its code, back from the code, and on the screen"
KEY = "4b" * 32
MOST_RUNS = 2


PAINT = """
async ({ face, preact, cards, runs }) => {
  const [{ CardFace }, { html, render }] = [await import(face), await import(preact)];
  const place = document.body.appendChild(document.createElement('main'));
  const once = (card) => {
    const started = performance.now();
    render(null, place);
    render(html`<${CardFace} card=${card} />`, place);
    if (place.getBoundingClientRect().height === 0) throw new Error('nothing was laid out');
    return performance.now() - started;
  };
  const first = once(cards[0]);
  const values = [];
  for (let run = 0; run < runs; run += 1) for (const card of cards) values.push(once(card));
  return { first, values };
}
"""
"""Each card drawn into a page of the app and laid out, as the screen shows it."""


def measure(bench: Bench) -> Iterator[Figure]:
    """Few runs, for a page with its code takes a slow tablet seconds and every first needs an engine of its own."""
    few = replace(bench, runs=min(bench.runs, MOST_RUNS), many=min(bench.many, MOST_RUNS * 2))
    for question in _questions():
        server = Figure(what=f"{question.what}, server", unit="ms", values=on_the_server(question, few.many))
        yield server
        for speed in SPEEDS:
            first, again = on_the_phone(few, speed, question)
            yield first
            yield times("server", again, server)
    for speed in SPEEDS:
        yield from _painted(few, speed)


def _painted(bench: Bench, speed: int) -> Iterator[Figure]:
    cards = [json.loads(answer(json.dumps({"ask": "card", **card})))["answer"] for card in _signed()]
    page = bench.browser.new_context().new_page()
    page.goto(bench.server.address)
    paths = {"face": module(page, "screens/card/card-face.js"), "preact": module(page, "vendor/preact.js")}
    with bench.at(speed):
        found = page.evaluate(PAINT, paths | {"cards": cards, "runs": bench.many})
    page.context.close()
    yield Figure(what=f"card on the screen, tablet, {speed}x: the very first", unit="ms", values=[found["first"]])
    yield Figure(what=f"card on the screen, {len(cards)} cards, tablet, {speed}x", unit="ms", values=found["values"])


def _questions() -> Iterator[Question]:
    cards = list(_signed())
    keyed = [card | {"card_key": KEY} for card in cards]
    codes = [json.loads(answer(json.dumps({"ask": "card_code", **card})))["answer"]["code"] for card in keyed]
    longest = max(map(len, codes))
    yield Question(what=f"card value, {len(cards)} cards", name="card", payloads=cards)
    yield Question(what="card PDF with its code", name="card_pdf", payloads=keyed)
    read = [{"text": code, "card_keys": [KEY]} for code in codes]
    yield Question(what=f"card from its code, {longest} characters at most", name="read_card_code", payloads=read)


def _signed() -> Iterator[dict[str, Any]]:
    records = {record["id"]: record for record in DEMO["records"]}
    for signature in (record for record in DEMO["records"] if record["kind"] == "signature"):
        plan = records[signature["body"]["plan_id"]]
        patient = records[plan["body"]["patient_id"]]
        yield {"patient": patient["body"], "plan": plan["body"], "signature": signature["body"]}
