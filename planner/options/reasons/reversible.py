"""A recession can be taken back, a resection cannot."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.options.reasons.reason import Reason, common_practice, speaks_against, speaks_for
from planner.situation import Situation
from planner.values.option import Operation

REVERSIBLE = common_practice("a recessed muscle can be advanced again, a resected piece is gone")


def reasons(_situation: Situation, draft: Draft) -> Iterator[Reason]:
    """For an option of recessions only, against one with a resection."""
    if all(move.operation is Operation.RECESS for move in draft.recipe.moves):
        yield speaks_for("recessions_only", "Recessions only: a second operation can take them back.", REVERSIBLE)
    else:
        yield speaks_against("resection", "A resection cannot be undone.", REVERSIBLE)
