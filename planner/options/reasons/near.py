"""Medial recti act most at near, lateral recti at distance: the muscle that acts where the deviation is larger."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Muscle
from planner.dosing.draft import Draft
from planner.figures import pd
from planner.options.reasons.reason import Reason, speaks_against, speaks_for
from planner.provenance import Mark, Provenance
from planner.rules.near import DIFFERENT_PD
from planner.situation import Situation
from planner.thresholds import reaches
from planner.values.option import Family

WHERE_MUSCLES_ACT = Provenance(
    mark=Mark.FROM_MEMORY, source="medial recti are taught to act most at near, lateral recti at distance"
)
BASIC_EXO = Provenance(mark=Mark.FROM_MEMORY, source="recess and resect in one eye is taught for basic exodeviations")


def reasons(situation: Situation, draft: Draft) -> Iterator[Reason]:
    """For the pair that acts where the deviation is larger by 10 Δ, against the other; one eye for a basic exo."""
    excess_pd = situation.findings.near.excess_pd
    if excess_pd is None:
        return
    family = draft.recipe.family
    if not reaches(abs(excess_pd), DIFFERENT_PD):
        if situation.direction.sign < 0 and family is Family.ONE_EYE:
            text = "Near and distance go together: the type for which recess and resect in one eye is taught."
            yield speaks_for("basic_exodeviation", text, BASIC_EXO)
        return
    if family is not Family.BOTH_EYES:
        return
    larger_at = "near" if excess_pd > 0 else "distance"
    acts_there = draft.recipe.moves[0].muscle is (Muscle.MR if excess_pd > 0 else Muscle.LR)
    pair = draft.recipe.moves[0].muscle.plural
    size = f"the deviation is {pd(excess_pd)} larger"
    if acts_there:
        text = f"The {pair} act most at {larger_at}, where {size}."
        yield speaks_for("acts_where_larger", text, WHERE_MUSCLES_ACT, near_excess_pd=excess_pd)
    else:
        text = f"The {pair} act least at {larger_at}, where {size}."
        yield speaks_against("acts_where_smaller", text, WHERE_MUSCLES_ACT, near_excess_pd=excess_pd)
