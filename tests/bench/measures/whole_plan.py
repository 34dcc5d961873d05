"""Everything the engine says of whole examinations, at the aims of its issue and beside a plain case.

The plain case is one that the first version could read. Version 1.0.0 answered it in 0.95 ms on the server (median of
400, on the machine where 2.0.0 needs 1.7 ms); whole examinations it could not read.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

from planner.desk import answer
from tests.bench.bench import SPEEDS, Bench
from tests.bench.figure import Figure, times
from tests.bench.measures.engine import Question, on_the_phone, on_the_server
from tests.planner.generated_cases import generated_cases

TITLE = "A whole plan: findings, options, additions, predictions"
SERVER_AIM_MS = 5.0
PHONE_AIM_MS = {4: 60.0}
OF, SEED = 40, 5
PLAIN = {
    "schema": 1,
    "table": "wright-after-parks",
    "examination": {
        "schema": 1,
        "examined_on": "2026-11-02",
        "readings": [
            {"gaze": "primary", "range": "distance", "correction": "with", "horizontal_pd": 40},
            {"gaze": "primary", "range": "near", "correction": "with", "horizontal_pd": 44},
        ],
        "fixing_eye": "right",
        "acuity_right": "6/6",
        "acuity_left": "6/9",
    },
}


def measure(bench: Bench) -> Iterator[Figure]:
    for what, cases in (("a plain case", [PLAIN]), (f"{OF} whole cases", _whole())):
        question = Question(what=what, name="propose", payloads=[{"case": case} for case in cases])
        values = on_the_server(question, bench.many)
        server = Figure(what=f"{what}, server", unit="ms", values=values, aim=SERVER_AIM_MS)
        yield server
        for speed in SPEEDS:
            _, phone = on_the_phone(bench, speed, question)
            yield times("server", replace(phone, aim=PHONE_AIM_MS.get(speed)), server)


def _whole() -> list[dict[str, Any]]:
    """Generated cases that are answered; a refusal is no plan."""
    cases = generated_cases(2 * OF, seed=SEED)
    return [case for case in cases if '"faults"' not in answer(json.dumps({"ask": "propose", "case": case}))[:12]][:OF]
