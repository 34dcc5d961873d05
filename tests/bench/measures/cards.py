"""The card as a value for the screen, as a page with its code, and read back from the code."""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Any

from planner.desk import answer
from tests.bench.bench import SPEEDS, Bench
from tests.bench.figure import Figure, times
from tests.bench.measures.engine import Question, on_the_phone, on_the_server
from tests.journeys.people import DEMO

TITLE = "The card: value, page with its code, and back from the code"
KEY = "4b" * 32


def measure(bench: Bench) -> Iterator[Figure]:
    for question in _questions():
        server = Figure(what=f"{question.what}, server", unit="ms", values=on_the_server(question, bench.many))
        yield server
        for speed in SPEEDS:
            first, again = on_the_phone(bench, speed, question)
            yield first
            yield times("server", again, server)


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
