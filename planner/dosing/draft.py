"""One recipe worked out for one deviation."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum
from math import fsum

from planner.anatomy import INSERTION_FROM_LIMBUS_MM, Muscle
from planner.direction import Direction, direction_of
from planner.dosing import steps
from planner.dosing.effect import Effect, effect_of
from planner.dosing.recipe import Recipe
from planner.dosing.rounding import to_half_mm
from planner.dosing.rows import amount_at
from planner.records.case import Change
from planner.tables import Column, Table
from planner.thresholds import exceeds, same
from planner.values.option import Dose, Operation
from planner.values.proposal import Target

LARGEST_LAST_ROW_RESIDUAL_PD = 10.0
"""The last row may stand in for a larger angle while what it leaves is within the band usually called success."""


class Reach(StrEnum):
    """Whether the table answers the deviation."""

    WITHIN = "within the table"
    LAST_ROW = "the last row's dose"
    BELOW = "below the first row"
    BEYOND = "beyond the last row"
    NO_COLUMN = "no such column"

    @property
    def has_doses(self) -> bool:
        """Whether the table gives doses."""
        return self in (Reach.WITHIN, Reach.LAST_ROW)


@dataclass(frozen=True, kw_only=True)
class Draft:
    """``columns``, ``doses`` and ``effects`` go by the recipe's moves; empty, all three, where no dose is given.

    ``correction_pd`` and ``residual_pd`` are signed like the deviation, eso +, to one decimal.
    """

    recipe: Recipe
    reach: Reach
    row_pd: float
    columns: tuple[Column, ...]
    doses: tuple[Dose, ...]
    effects: tuple[Effect, ...]
    correction_pd: float
    residual_pd: float


def draft(table: Table, recipe: Recipe, target: Target, changes: tuple[Change, ...] = ()) -> Draft:
    """The recipe's doses by the table, with those of ``changes`` that the surgeon set instead."""
    direction = direction_of(target.horizontal_pd)
    row_pd = recipe.row_pd(abs(target.horizontal_pd))
    columns = _columns(table, direction, recipe)
    if columns is None:
        return _without_doses(recipe, Reach.NO_COLUMN, row_pd, target)
    if any(exceeds(column.first_pd, row_pd) for column in columns):
        return _without_doses(recipe, Reach.BELOW, row_pd, target)
    doses = tuple(
        _dose(steps.Asked(table=table, column=column, move=move, row_pd=row_pd, target=target))
        for column, move in zip(columns, recipe.moves, strict=True)
    )
    reach = Reach.WITHIN
    if any(exceeds(row_pd, column.last_pd) for column in columns):
        _, residual_pd = _outcome(_effects(columns, doses, row_pd), target)
        if exceeds(abs(residual_pd), LARGEST_LAST_ROW_RESIDUAL_PD):
            return _without_doses(recipe, Reach.BEYOND, row_pd, target)
        reach = Reach.LAST_ROW
    doses = tuple(_finished(dose, changes) for dose in doses)
    effects = _effects(columns, doses, row_pd)
    correction_pd, residual_pd = _outcome(effects, target)
    return Draft(
        recipe=recipe,
        reach=reach,
        row_pd=row_pd,
        columns=columns,
        doses=doses,
        effects=effects,
        correction_pd=correction_pd,
        residual_pd=residual_pd,
    )


def _columns(table: Table, direction: Direction, recipe: Recipe) -> tuple[Column, ...] | None:
    found = [table.columns.get((direction, move.form, move.operation)) for move in recipe.moves]
    columns = tuple(column for column in found if column is not None)
    return columns if len(columns) == len(found) else None


def _without_doses(recipe: Recipe, reach: Reach, row_pd: float, target: Target) -> Draft:
    return Draft(
        recipe=recipe,
        reach=reach,
        row_pd=row_pd,
        columns=(),
        doses=(),
        effects=(),
        correction_pd=0.0,
        residual_pd=round(target.horizontal_pd, 1) + 0.0,
    )


def _dose(asked: steps.Asked) -> Dose:
    amount = amount_at(asked.column, asked.row_pd)
    if amount is None:
        raise AssertionError("a column is asked only from its first row on")
    mm = to_half_mm(amount.mm)
    muscle, operation = asked.move.muscle, asked.move.operation
    return Dose(
        eye=asked.move.eye,
        muscle=muscle,
        operation=operation,
        mm=mm,
        table_mm=mm,
        changed=False,
        insertion_mm=INSERTION_FROM_LIMBUS_MM[muscle],
        limbus_mm=limbus_mm(muscle, operation, mm),
        steps=steps.explain(asked, amount, mm),
    )


def _finished(dose: Dose, changes: tuple[Change, ...]) -> Dose:
    set_mm = next((each.mm for each in changes if (each.eye, each.muscle) == (dose.eye, dose.muscle)), dose.table_mm)
    changed = not same(set_mm, dose.table_mm)
    mm = set_mm if changed else dose.table_mm
    said = (*dose.steps, steps.changed(dose.table_mm, mm)) if changed else dose.steps
    return replace(
        dose,
        mm=mm,
        changed=changed,
        limbus_mm=limbus_mm(dose.muscle, dose.operation, mm),
        steps=(*said, steps.limbus(dose.muscle, dose.operation, mm)),
    )


def limbus_mm(muscle: Muscle, operation: Operation, mm: float) -> float:
    """Arc from the limbus to the new attachment: behind the insertion after a recession, at it after a resection."""
    insertion_mm = INSERTION_FROM_LIMBUS_MM[muscle]
    return round(insertion_mm + mm, 2) if operation is Operation.RECESS else insertion_mm


def _effects(columns: tuple[Column, ...], doses: tuple[Dose, ...], row_pd: float) -> tuple[Effect, ...]:
    return tuple(effect_of(column, dose.mm, row_pd) for column, dose in zip(columns, doses, strict=True))


def _outcome(effects: tuple[Effect, ...], target: Target) -> tuple[float, float]:
    sign = direction_of(target.horizontal_pd).sign
    correction_pd = sign * fsum(effect.pd for effect in effects)
    return round(correction_pd, 1) + 0.0, round(target.horizontal_pd - correction_pd, 1) + 0.0
