"""A whole check in theatre as the tablet makes it: what the desk asks is answered honestly, until it is closed."""

from __future__ import annotations

from typing import Any

from tests.clinic.pen import RECORDED_AT, Pen, Raw, ask

FIRST: Raw = {"name": "Nia Sorel", "role": "nurse"}
SECOND: Raw = {"name": "Tomas Quill", "role": "surgeon"}


def honest(step: Raw, line: list[Raw]) -> Raw:
    """What a step is answered with when all is well."""
    patient, _, plan, signature = line
    doses = plan["body"]["option"]["doses"]
    eyes = {dose["eye"] for dose in doses}
    entered: dict[str, Raw] = {
        "wristband": {
            "hospital_number": patient["body"]["hospital_number"],
            "born_on": patient["body"]["born_on"],
        },
        "wristband number": {"hospital_number": patient["body"]["hospital_number"]},
        "paper": {"check_word": signature["body"]["check_word"]},
        "consent": {"consented": [{name: dose[name] for name in ("eye", "muscle", "operation")} for dose in doses]},
        "mark": {"marked": "both" if len(eyes) > 1 else eyes.pop()},
    }
    chosen = {"answer": next((each["value"] for each in step["answers"] if each["effect"] == "on"), None)}
    return {"step": step["id"], **entered.get(step["way"], chosen)}


def check_body(line: list[Raw], phase: str = "sign in", *, wrong: Raw | None = None, **closing: Any) -> Raw:
    """The body of a check; ``wrong`` overrides what is entered, step by step, and ends it where that stops."""
    patient, _, plan, signature = line
    check = {
        "patient": patient["body"],
        "plan": plan["body"],
        "signature": signature["body"],
        "card": "current",
        "phase": phase,
        "first": FIRST,
        "second": SECOND,
        "local": closing.pop("local", []),
        "also": closing.pop("also", []),
        "entries": [],
    }
    while step := (progress := ask("follow_check", **check))["step"]:
        check["entries"].append(honest(step, line) | (wrong or {}).get(step["id"], {}))
    assert progress["outcome"]
    return ask("close_check", round=check, signature_id=signature["id"], closed_at=RECORDED_AT, **closing)


def theatre_check(pen: Pen, line: list[Raw], phase: str = "sign in", **facts: Any) -> Raw:
    """The record of a check."""
    return pen.record("theatre_check", line[0]["patient"], check_body(line, phase, **facts))
