"""Recess and resect in one eye, each eye an option of its own."""

from __future__ import annotations

from planner.anatomy import Eye
from planner.direction import Direction
from planner.dosing.recipe import Move, Recipe
from planner.situation import Situation
from planner.tables import Form
from planner.values.option import Family, Operation


def recipes(situation: Situation) -> tuple[Recipe, ...]:
    """One recipe for each eye, whatever the angle."""
    return tuple(_one(eye, situation.direction) for eye in Eye)


def _one(eye: Eye, direction: Direction) -> Recipe:
    recessed, resected = direction.recessed, direction.resected
    return Recipe(
        id=f"recess-{recessed.lower()}-resect-{resected.lower()}-{eye}",
        family=Family.ONE_EYE,
        title=f"{eye.capitalize()} eye: recess the {recessed.words}, resect the {resected.words}",
        moves=moves(eye, direction),
    )


def moves(eye: Eye, direction: Direction) -> tuple[Move, Move]:
    """Both muscles of one eye, dosed by the one-eye columns."""
    return (
        Move(eye=eye, muscle=direction.recessed, operation=Operation.RECESS, form=Form.ONE),
        Move(eye=eye, muscle=direction.resected, operation=Operation.RESECT, form=Form.ONE),
    )
