"""A deviation that differs in side gaze: a dose for straight ahead overdoes one side or falls short on the other."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.figures import pd
from planner.precision.limits import HOLMES
from planner.situation import Situation
from planner.values.statement import Level, Notice


def notices(situation: Situation, _draft: Draft) -> Iterator[Notice]:
    """A caution where the difference is beyond measurement error."""
    comitance = situation.findings.comitance
    if comitance.comitant is False and comitance.difference_pd is not None:
        yield Notice(
            code="incomitance_not_answered",
            text=(
                f"Side gaze differs from straight ahead by {pd(comitance.difference_pd)}: "
                "look for palsy or restriction, for which the table is not made."
            ),
            provenance=HOLMES,
            facts={"difference_pd": comitance.difference_pd},
            level=Level.CAUTION,
        )
