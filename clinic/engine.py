"""The engine's counter, asked from Python."""

from __future__ import annotations

import json
from typing import Any

from planner.errors import Fault, Refused


def ask(name: str, **payload: object) -> Any:  # noqa: ANN401 - each question has an answer of its own form
    """The desk's answer; Refused with its faults."""
    from planner import desk  # noqa: PLC0415 - commands that plan nothing need not load the dose tables

    answer = json.loads(desk.answer(json.dumps({"ask": name, **payload})))
    if "faults" in answer:
        raise Refused(*(Fault(**fault) for fault in answer["faults"]))
    return answer["answer"]
