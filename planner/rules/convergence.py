"""An exodeviation larger at near: one-eye surgery is leaned towards the medial rectus."""

from __future__ import annotations

from collections.abc import Iterator

from planner.direction import Direction
from planner.dosing.draft import Draft
from planner.figures import pd
from planner.provenance import Mark, Provenance
from planner.rules.near import DIFFERENT_PD
from planner.situation import Situation
from planner.thresholds import reaches
from planner.values.option import Family
from planner.values.statement import Level, Notice

BIAS = Provenance(
    mark=Mark.COMMON_PRACTICE,
    source="convergence insufficiency type: more medial rectus resection, less lateral rectus recession",
)


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A note on recess and resect in one eye; no figure is made up for the leaning."""
    excess_pd = situation.findings.near.excess_pd
    if (
        excess_pd is not None
        and situation.direction is Direction.EXO
        and draft.recipe.family is Family.ONE_EYE
        and reaches(excess_pd, DIFFERENT_PD)
    ):
        yield Notice(
            code="convergence_bias",
            text=(
                f"The exodeviation is {pd(excess_pd)} larger at near: many resect more of the medial rectus and recess "
                "less of the lateral. By how much is the surgeon's figure; the table's stand here."
            ),
            provenance=BIAS,
            facts={"near_excess_pd": excess_pd},
            level=Level.NOTE,
        )
