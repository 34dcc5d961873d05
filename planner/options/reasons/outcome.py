"""How the source's own patients ended."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.figures import pd
from planner.options.reasons.reason import Reason, speaks_against, speaks_for
from planner.situation import Situation
from planner.thresholds import exceeds

HALF_PERCENT = 50.0
"""House rule: what failed in half of the patients or more speaks against an operation."""


def reasons(situation: Situation, draft: Draft) -> Iterator[Reason]:
    """For or against what is dosed by a table that prints its success."""
    outcome = situation.table.outcomes.get(situation.direction)
    if outcome is None or draft.recipe.series:
        return
    text = (
        f"{outcome.success_percent:g} % of {outcome.patients} patients of {situation.table.stamp.name} ended less than "
        f"{pd(outcome.within_pd)} from straight."
    )
    speaks = speaks_for if exceeds(outcome.success_percent, HALF_PERCENT) else speaks_against
    yield speaks(
        "outcome_of_the_source",
        text,
        situation.table.provenance,
        success_percent=outcome.success_percent,
        within_pd=outcome.within_pd,
    )
