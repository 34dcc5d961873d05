"""Frozen cases that the engine runs when it starts: if it gives another dose than the printed row, nothing is planned.

``cases.json`` holds them: a case, an option and the millimetres that the source prints for it.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from planner.codec import read
from planner.errors import Fault, Refused
from planner.proposal import propose
from planner.records.case import Case

CASES = Path(__file__).parent / "cases.json"


def self_test() -> int:
    """How many frozen cases were answered as printed; :class:`Refused` with ``self_test_failed`` for each other one."""
    frozen = json.loads(CASES.read_text(encoding="utf-8"))
    faults = [fault for each in frozen if (fault := _fault(each))]
    if faults:
        raise Refused(*faults)
    return len(frozen)


def _fault(frozen: dict[str, Any]) -> Fault | None:
    try:
        found = _doses(frozen)
    except Refused as refusal:
        found = [str(refusal)]
    if found == frozen["doses"]:
        return None
    return Fault(
        code="self_test_failed",
        text=f"The engine fails its own check, so it does not plan: {frozen['source']}.",
        field=frozen["option"],
        value="; ".join(found),
        allowed="; ".join(frozen["doses"]),
    )


def _doses(frozen: dict[str, Any]) -> list[str]:
    options = propose(read(Case, frozen["case"])).options
    option = next(each for each in options if each.id == frozen["option"])
    return [f"{dose.eye} {dose.muscle} {dose.operation} {dose.mm:g}" for dose in option.doses]
