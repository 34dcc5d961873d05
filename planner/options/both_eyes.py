"""The same muscle of both eyes: recess both, or resect both."""

from __future__ import annotations

from planner.anatomy import Eye, Muscle
from planner.dosing.recipe import Move, Recipe
from planner.situation import Situation
from planner.tables import Form
from planner.values.option import Family, Operation


def recipes(situation: Situation) -> tuple[Recipe, ...]:
    """Two recipes, whatever the angle."""
    direction = situation.direction
    return (_both(direction.recessed, Operation.RECESS), _both(direction.resected, Operation.RESECT))


def _both(muscle: Muscle, operation: Operation) -> Recipe:
    return Recipe(
        id=f"{operation}-both-{muscle.lower()}",
        family=Family.BOTH_EYES,
        title=f"{operation.capitalize()} both {muscle.plural}",
        moves=tuple(Move(eye=eye, muscle=muscle, operation=operation, form=Form.BOTH) for eye in Eye),
    )
