"""The engine's counter, asked from Python."""

from __future__ import annotations

import json
from typing import Any

from planner import desk
from planner.errors import Fault, Refused


def ask(name: str, **payload: object) -> Any:  # noqa: ANN401 - each question has an answer of its own form
    """The desk's answer; Refused with its faults."""
    answer = json.loads(desk.answer(json.dumps({"ask": name, **payload})))
    if "faults" in answer:
        raise Refused(*(Fault(**fault) for fault in answer["faults"]))
    return answer["answer"]
