"""The check word on the paper against that of the card."""

from __future__ import annotations

import re

from planner.checks.comparisons.given import given
from planner.checks.round import Round
from planner.records.theatre_check import Entry
from planner.values.checks import Stop


def compare(entry: Entry, check: Round) -> Stop | None:
    """Letters only: spaces and the size of letters are no difference."""
    typed, word = given(entry.check_word, "check_word"), check.signature.check_word
    if _letters(typed) == _letters(word):
        return None
    return Stop(
        code="check_word_differs",
        step=entry.step,
        text="The paper was not printed from this signed plan. It may be an older one, or another patient's.",
        differences=(f"Check word: the paper says {typed.upper()}, the card says {word}.",),
    )


def _letters(word: str) -> str:
    return re.sub(r"[^A-Z]", "", word.upper())
