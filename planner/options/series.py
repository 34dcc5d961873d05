"""Operations dosed by a published series of their own, beside what the table and the doubling rule say.

A series is offered only for the deviations that it was done for, and after a recession only where one was done.
"""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Eye, Muscle
from planner.dosing.recipe import Move, Recipe
from planner.records.examination import PastOperation
from planner.series import Eyes, Series, series
from planner.situation import Situation
from planner.tables import Form
from planner.thresholds import exceeds, reaches
from planner.values.option import Family


def recipes(situation: Situation) -> tuple[Recipe, ...]:
    """One recipe for each eye, or one for both, of every series that was done for such a deviation."""
    return tuple(recipe for each in series() if _was_done_for(each, situation) for recipe in _recipes(each, situation))


def _was_done_for(each: Series, situation: Situation) -> bool:
    column, size_pd = each.column, situation.dosed_pd
    within = not exceeds(column.first_pd, size_pd) and not exceeds(size_pd, column.last_pd)
    return each.direction is situation.direction and within


def _recipes(each: Series, situation: Situation) -> Iterator[Recipe]:
    least_mm = each.after_recession_mm
    if least_mm is not None and not all(_was_recessed(situation, eye, each.muscle, least_mm) for eye in Eye):
        return
    if each.eyes is Eyes.BOTH:
        yield Recipe(
            id=each.stamp.id,
            family=Family.BOTH_EYES,
            title=f"{each.operation.capitalize()} both {each.muscle.plural} ({each.words})",
            moves=tuple(_move(each, eye) for eye in Eye),
            series=each,
        )
        return
    for eye in Eye:
        yield Recipe(
            id=f"{each.stamp.id}-{eye}",
            family=Family.ONE_MUSCLE,
            title=f"{eye.capitalize()} eye: {each.operation} the {each.muscle.words} ({each.words})",
            moves=(_move(each, eye),),
            series=each,
        )


def _move(each: Series, eye: Eye) -> Move:
    form = Form.BOTH if each.eyes is Eyes.BOTH else Form.ONE
    return Move(eye=eye, muscle=each.muscle, operation=each.operation, form=form)


def _was_recessed(situation: Situation, eye: Eye, muscle: Muscle, least_mm: float) -> bool:
    """Whether the antagonist of ``muscle`` was recessed so far, or by an unknown amount."""
    antagonist = Muscle.MR if muscle is Muscle.LR else Muscle.LR
    done = (each for each in situation.earlier(eye, antagonist) if each.operation is PastOperation.RECESS)
    return any(each.mm is None or reaches(each.mm, least_mm) for each in done)
