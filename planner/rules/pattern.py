"""An A or V pattern that straight horizontal surgery leaves as it is."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.figures import pd
from planner.findings.pattern import THRESHOLDS
from planner.situation import Situation
from planner.values.statement import Level, Notice


def notices(situation: Situation, _draft: Draft) -> Iterator[Notice]:
    """A caution where the pattern is significant."""
    pattern = situation.findings.pattern
    if pattern.shape.is_pattern:
        yield Notice(
            code="pattern_not_answered",
            text=f"The {pattern.shape} pattern of {pd(pattern.size_pd)} is not answered by this operation.",
            provenance=THRESHOLDS,
            facts={"shape": pattern.shape.value, "size_pd": pattern.size_pd},
            level=Level.CAUTION,
        )
