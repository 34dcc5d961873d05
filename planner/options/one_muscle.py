"""One muscle of one eye, for the small angles that one muscle is known to answer.

Dosed by the column for both eyes at the row of twice the angle (the doubling rule). A resection is offered only where
the eye's own antagonist was recessed before, which is what single resections are published for.
"""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Eye, Muscle
from planner.direction import Direction
from planner.dosing.recipe import Move, Recipe
from planner.records.examination import PastOperation
from planner.situation import Situation
from planner.tables import Form
from planner.thresholds import exceeds
from planner.values.option import Family, Operation

LARGEST_PD = {Direction.ESO: 35.0, Direction.EXO: 25.0}
"""Eso: one medial rectus recession for 15 to 35 Δ, published (PMID 20795601); exo: one lateral rectus recession for up
to 25 Δ, from memory, verify."""


def recipes(situation: Situation) -> tuple[Recipe, ...]:
    """A recession for each eye, and a resection where it answers a residual deviation; none for large angles."""
    if exceeds(situation.size_pd, LARGEST_PD[situation.direction]):
        return ()
    return tuple(_recipes(situation))


def _recipes(situation: Situation) -> Iterator[Recipe]:
    direction = situation.direction
    for eye in Eye:
        yield _one(eye, direction.recessed, Operation.RECESS)
    for eye in Eye:
        done = {each.operation for each in situation.earlier(eye, direction.recessed)}
        if PastOperation.RECESS in done:
            yield _one(eye, direction.resected, Operation.RESECT)


def _one(eye: Eye, muscle: Muscle, operation: Operation) -> Recipe:
    return Recipe(
        id=f"{operation}-{muscle.lower()}-{eye}",
        family=Family.ONE_MUSCLE,
        title=f"{eye.capitalize()} eye: {operation} the {muscle.words}",
        moves=(Move(eye=eye, muscle=muscle, operation=operation, form=Form.BOTH),),
    )
