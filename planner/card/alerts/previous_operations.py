"""Muscles operated before, of either eye."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Eye
from planner.card.alerts.about import About
from planner.card.alerts.entered import ENTERED
from planner.figures import mm
from planner.records.examination import PastOperation, PreviousOperation
from planner.values.alert import Alert, AlertKind

PAST_WORDS = {
    PastOperation.RECESS: "recessed",
    PastOperation.RESECT: "resected",
    PastOperation.OTHER: "operated",
    PastOperation.UNKNOWN: "operated, how is not known",
}


def alerts(about: About) -> Iterator[Alert]:
    """One for each eye with a history."""
    for eye in Eye:
        done = [each for each in about.examination.previous_operations if each.eye is eye]
        if done:
            text = f"{eye.upper()} eye: {'; '.join(map(_words, done))}."
            yield Alert(
                code=f"previous-{eye}",
                kind=AlertKind.ALERT,
                topic="Operated before",
                text=text,
                provenance=ENTERED,
            )


def _words(done: PreviousOperation) -> str:
    amount = "" if done.mm is None else f" {mm(done.mm)}"
    year = "" if done.year is None else f" ({done.year})"
    return f"{done.muscle.words} {PAST_WORDS[done.operation]}{amount}{year}"
