"""The mark on the skin against the eyes of the signed plan."""

from __future__ import annotations

from planner.anatomy import Eye
from planner.checks.comparisons.given import given
from planner.checks.round import Round
from planner.records.theatre_check import Entry, Marked
from planner.values.checks import Stop

WORDS = {
    Marked.RIGHT: "the right eye",
    Marked.LEFT: "the left eye",
    Marked.BOTH: "both eyes",
    Marked.NONE: "no eye",
}


def compare(entry: Entry, check: Round) -> Stop | None:
    """An eye that is not operated must not be marked, and none that is may be without."""
    marked, planned = given(entry.marked, "marked"), _planned({dose.eye for dose in check.plan.option.doses})
    if marked is planned:
        return None
    return Stop(
        code="mark_differs",
        step=entry.step,
        text="The mark on the skin does not agree with the signed plan.",
        differences=(f"Marked is {WORDS[marked]}; the signed plan is for {WORDS[planned]}.",),
    )


def _planned(eyes: set[Eye]) -> Marked:
    if len(eyes) > 1:
        return Marked.BOTH
    return Marked.RIGHT if eyes == {Eye.RIGHT} else Marked.LEFT
