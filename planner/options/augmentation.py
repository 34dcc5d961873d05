"""More medial rectus recession where an esodeviation is larger at near (high AC/A).

The trial recessed each muscle further than the standard amount for distance; it says nothing of one, three or four
muscles. What the addition does at distance was not published, so the expected result leaves it out.
"""

from __future__ import annotations

from planner.anatomy import Muscle
from planner.direction import Direction
from planner.dosing import addition
from planner.dosing.addition import Addition, Additions
from planner.dosing.recipe import Recipe
from planner.figures import mm, pd
from planner.provenance import Mark, Provenance
from planner.records.examination import Range
from planner.situation import Situation
from planner.thresholds import exceeds, reaches
from planner.values.option import Family, Operation
from planner.values.statement import Statement

FROM_PD, MORE_ABOVE_PD = 10.0, 20.0
LESS_MM, MORE_MM = 1.0, 1.5
TRIAL = Provenance(
    mark=Mark.PUBLISHED,
    source=(
        "PMC6825697 (RCT, n = 100): recessions 1.0 mm more where near exceeds distance by 10 to 20 Δ, 1.5 mm more above"
    ),
)
FAMILIES = (Family.BOTH_EYES, Family.ONE_EYE)


def additions(situation: Situation, recipe: Recipe) -> Additions:
    """One for each medial rectus that the recipe recesses by a table made for two muscles."""
    excess_pd = situation.findings.near.excess_pd
    if (
        situation.direction is not Direction.ESO
        or situation.target.reading.range is not Range.DISTANCE
        or recipe.series
        or recipe.family not in FAMILIES
        or excess_pd is None
        or not reaches(excess_pd, FROM_PD)
    ):
        return addition.NONE
    added = _addition(excess_pd)
    return {move: added for move in recipe.moves if (move.muscle, move.operation) == (Muscle.MR, Operation.RECESS)}


def _addition(excess_pd: float) -> Addition:
    more_mm = MORE_MM if exceeds(excess_pd, MORE_ABOVE_PD) else LESS_MM
    reason = Statement(
        code="near_excess",
        text=f"The esodeviation is {pd(excess_pd)} larger at near: {mm(more_mm)} more recession.",
        provenance=TRIAL,
        facts={"near_excess_pd": excess_pd, "more_mm": more_mm},
    )
    return Addition(mm=more_mm, reason=reason)
