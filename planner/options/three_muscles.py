"""Recess both and resect one, for angles that ask much of two muscles.

The pair is dosed by the column for both eyes. The third muscle works against an operated one in the same eye, so it is
dosed by the column of the one-eye operation.
"""

from __future__ import annotations

from planner.anatomy import Eye
from planner.direction import Direction
from planner.dosing.recipe import Move, Recipe
from planner.situation import Situation
from planner.tables import Form
from planner.thresholds import exceeds
from planner.values.option import Family, Operation

BEYOND_PD = 50.0
"""Three muscles beyond 50 to 60 Δ, eso and exo: from memory, verify."""


def recipes(situation: Situation) -> tuple[Recipe, ...]:
    """One recipe for each eye whose second muscle is resected; none for smaller angles."""
    if not exceeds(situation.size_pd, BEYOND_PD):
        return ()
    return tuple(_three(eye, situation.direction) for eye in Eye)


def _three(resected_eye: Eye, direction: Direction) -> Recipe:
    recessed, resected = direction.recessed, direction.resected
    moves = []
    for eye in Eye:
        moves.append(Move(eye=eye, muscle=recessed, operation=Operation.RECESS, form=Form.BOTH))
        if eye is resected_eye:
            moves.append(Move(eye=eye, muscle=resected, operation=Operation.RESECT, form=Form.ONE))
    return Recipe(
        id=f"recess-both-{recessed.lower()}-resect-{resected.lower()}-{resected_eye}",
        family=Family.THREE_MUSCLES,
        title=f"Recess both {recessed.plural}, resect the {resected_eye} {resected.words}",
        moves=tuple(moves),
    )
