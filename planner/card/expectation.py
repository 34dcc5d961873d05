"""What the operation answers and what it is expected to leave, in words."""

from __future__ import annotations

from planner.findings import target
from planner.findings.size import horizontal_words, vertical_words
from planner.measurement import measure
from planner.records.case import Case
from planner.records.technique import Condition
from planner.thresholds import same
from planner.values.option import Answers, Option


def deviation_words(case: Case) -> str:
    """``Esodeviation 40 Δ and right hyper 8 Δ at distance with correction``: what the plan was made for."""
    answered = target(measure(case.examination), case.aim)
    reading = answered.reading
    how = "" if reading.condition is Condition.PLAIN else f", {reading.condition}"
    vertical_pd = answered.vertical_pd or 0.0
    if same(vertical_pd, 0):
        words = horizontal_words(answered.horizontal_pd)
    elif same(answered.horizontal_pd, 0):
        words = vertical_words(vertical_pd)
    else:
        words = f"{horizontal_words(answered.horizontal_pd)} and {_inside(vertical_words(vertical_pd))}"
    return f"{words} at {reading.range} {reading.correction} correction{how}"


def expected_words(option: Option) -> str:
    """``Expected to remain: esodeviation 2 Δ``, and what is expected of other deviations than the horizontal."""
    said = [each.statement.text.removesuffix(".") for each in option.expected]
    if option.answers is Answers.HORIZONTAL or not same(option.expected_residual_pd, 0):
        said.insert(0, f"Expected to remain: {_inside(horizontal_words(option.expected_residual_pd))}")
    return ". ".join(said)


def _inside(words: str) -> str:
    return f"{words[0].lower()}{words[1:]}"
