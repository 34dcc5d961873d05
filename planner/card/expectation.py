"""What the operation answers and what it is expected to leave, in words."""

from __future__ import annotations

from planner.findings import target
from planner.findings.size import horizontal_words
from planner.measurement import measure
from planner.records.case import Case
from planner.records.technique import Condition
from planner.values.option import Option


def deviation_words(case: Case) -> str:
    """``Esodeviation 40 Δ at distance with correction``: the deviation that the plan was made for."""
    answered = target(measure(case.examination), case.aim)
    reading = answered.reading
    how = "" if reading.condition is Condition.PLAIN else f", {reading.condition}"
    return f"{horizontal_words(answered.horizontal_pd)} at {reading.range} {reading.correction} correction{how}"


def expected_words(option: Option) -> str:
    """``Expected to remain: esodeviation 2 Δ``."""
    words = horizontal_words(option.expected_residual_pd)
    return f"Expected to remain: {words[0].lower()}{words[1:]}"
