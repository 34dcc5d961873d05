"""Whom the source of a dose operated: a patient unlike them is said to be so."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.figures import pd
from planner.situation import Situation
from planner.thresholds import exceeds
from planner.values.option import Family
from planner.values.statement import Level, Notice


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A caution below the smallest angle operated there, and one on the wrong eye of one-eye surgery."""
    if draft.recipe.series:
        return
    table = situation.table
    outcome = table.outcomes.get(situation.direction)
    if outcome and exceeds(outcome.from_pd, situation.size_pd):
        yield Notice(
            code="below_the_sources_patients",
            text=(
                f"The patients of {table.stamp.name} had an {situation.direction.words} of {pd(outcome.from_pd)} or "
                f"more; this one is {pd(situation.size_pd)}."
            ),
            provenance=table.provenance,
            facts={"from_pd": outcome.from_pd, "size_pd": situation.size_pd},
            level=Level.CAUTION,
        )
    poorer = situation.poorer_eye
    if table.one_eye_on_poorer and draft.recipe.family is Family.ONE_EYE and draft.recipe.eyes != {poorer}:
        found = f"the {poorer} eye sees less" if poorer else "no eye was found to see less"
        yield Notice(
            code="meant_for_the_poorer_eye",
            text=f"{table.stamp.name} operates one eye only if it is the one that sees less; {found}.",
            provenance=table.provenance,
            facts={},
            level=Level.CAUTION,
        )
