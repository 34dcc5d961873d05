"""One or both lateral recti for an esodeviation that a medial recession left."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Muscle
from planner.direction import Direction
from planner.dosing.draft import Draft
from planner.figures import pd
from planner.options.reasons.reason import Reason, speaks_against, speaks_for
from planner.rules.residual_esotropia import ONE_EYE_UP_TO_PD, SERIES, was_recessed
from planner.situation import Situation
from planner.thresholds import exceeds
from planner.values.option import Operation


def reasons(situation: Situation, draft: Draft) -> Iterator[Reason]:
    """For one up to 15 Δ and both above, against the other way round."""
    moves = draft.recipe.moves
    resects = all((move.muscle, move.operation) == (Muscle.LR, Operation.RESECT) for move in moves)
    if situation.direction is not Direction.ESO or not resects:
        return
    if not all(was_recessed(situation, move.eye) for move in moves):
        return
    large = exceeds(situation.size_pd, ONE_EYE_UP_TO_PD)
    both = len(moves) > 1
    done = "Both lateral recti are" if both else "One lateral rectus is"
    limit = f"above {pd(ONE_EYE_UP_TO_PD)}" if both else f"up to {pd(ONE_EYE_UP_TO_PD)}"
    text = f"{done} what a series advises for a residual esotropia {limit}."
    speaks = speaks_for if large is both else speaks_against
    yield speaks("residual_by_size", text, SERIES, size_pd=situation.size_pd)
