"""An A or V pattern that straight horizontal surgery leaves as it is."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.figures import pd
from planner.findings.pattern import THRESHOLDS, Shape
from planner.situation import Situation
from planner.values.statement import Level, Notice


def notices(situation: Situation, _draft: Draft) -> Iterator[Notice]:
    """A caution where the pattern is significant."""
    pattern = situation.findings.pattern
    if pattern.shape in (Shape.A, Shape.V) and pattern.down_minus_up_pd is not None:
        difference_pd = pattern.down_minus_up_pd
        yield Notice(
            code="pattern_not_answered",
            text=f"The {pattern.shape} pattern of {pd(difference_pd)} is not answered by this operation.",
            provenance=THRESHOLDS,
            facts={"shape": pattern.shape.value, "down_minus_up_pd": difference_pd},
            level=Level.CAUTION,
        )
