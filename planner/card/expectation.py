"""What the operation answers and what it is expected to leave, in words."""

from __future__ import annotations

from planner.findings import target
from planner.findings.size import horizontal_words
from planner.records.examination import Examination
from planner.values.option import Option


def deviation_words(examination: Examination) -> str:
    """``Esodeviation 40 Δ at distance with correction``: the reading that the plan was made for."""
    aim = target(examination)
    return f"{horizontal_words(aim.horizontal_pd)} at {aim.reading.range} {aim.reading.correction} correction"


def expected_words(option: Option) -> str:
    """``Expected to remain: esodeviation 2 Δ``."""
    words = horizontal_words(option.expected_residual_pd)
    return f"Expected to remain: {words[0].lower()}{words[1:]}"
