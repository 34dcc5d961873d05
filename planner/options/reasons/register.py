"""The lines of thought, weightiest first."""

from __future__ import annotations

from planner.dosing.draft import Draft
from planner.options.reasons import (
    established,
    fixing,
    leftover,
    near,
    outcome,
    residual,
    reversible,
    seeing,
    symmetry,
    untouched,
)
from planner.options.reasons.reason import Reason
from planner.situation import Situation

THOUGHTS = (seeing, near, residual, untouched, fixing, reversible, symmetry, outcome, established, leftover)


def reasons(situation: Situation, draft: Draft) -> tuple[Reason, ...]:
    """All reasons about an option; none where it has no dose."""
    if not draft.reach.has_doses:
        return ()
    return tuple(reason for thought in THOUGHTS for reason in thought.reasons(situation, draft))
