"""Recess and resect in both eyes, for the largest angles."""

from __future__ import annotations

from planner.anatomy import Eye
from planner.dosing.recipe import Recipe
from planner.options import one_eye
from planner.situation import Situation
from planner.thresholds import exceeds
from planner.values.option import Family

BEYOND_PD = 80.0
"""Four muscles beyond 80 to 90 Δ: from memory, verify."""


def recipes(situation: Situation) -> tuple[Recipe, ...]:
    """One recipe; none for smaller angles."""
    if not exceeds(situation.size_pd, BEYOND_PD):
        return ()
    direction = situation.direction
    recessed, resected = direction.recessed, direction.resected
    four = Recipe(
        id=f"recess-both-{recessed.lower()}-resect-both-{resected.lower()}",
        family=Family.FOUR_MUSCLES,
        title=f"Recess both {recessed.plural}, resect both {resected.plural}",
        moves=tuple(move for eye in Eye for move in one_eye.moves(eye, direction)),
    )
    return (four,)
