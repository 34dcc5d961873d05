"""One recipe worked out for one situation."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from math import fsum

from planner.dosing import addition, steps
from planner.dosing.addition import Addition, Additions
from planner.dosing.effect import Effect, effect_of
from planner.dosing.place import place
from planner.dosing.recipe import Move, Recipe
from planner.dosing.rounding import to_half_mm
from planner.dosing.rows import Amount, amount_at
from planner.dosing.setting import Setting, dose
from planner.dosing.widest import widest_mm
from planner.series import Series
from planner.situation import Situation
from planner.tables import Column, Table
from planner.thresholds import exceeds
from planner.values.option import Dose
from planner.values.statement import Statement

LARGEST_LAST_ROW_RESIDUAL_PD = 10.0
"""The last row may stand in for a larger angle while what it leaves is within the band usually called success."""

PRINTED_MUSCLES = 2
"""Dose tables are printed for two muscles; one, three and four are derived."""


class Reach(StrEnum):
    """Whether the table answers the deviation."""

    WITHIN = "within the table"
    LAST_ROW = "the last row's dose"
    BELOW = "below the first row"
    BEYOND = "beyond the last row"
    NO_COLUMN = "no such column"
    NOT_DERIVED = "not derived from this table"

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


def draft(situation: Situation, recipe: Recipe, additions: Additions = addition.NONE) -> Draft:
    """The recipe's doses by its source, with what is added and what the surgeon set instead."""
    row_pd = recipe.row_pd(situation.dosed_pd)
    columns = _columns(situation, recipe)
    if not recipe.series and situation.table.only_as_printed and len(recipe.moves) != PRINTED_MUSCLES:
        return _without_doses(situation, recipe, Reach.NOT_DERIVED)
    if columns is None:
        return _without_doses(situation, recipe, Reach.NO_COLUMN)
    if any(exceeds(column.first_pd, row_pd) for column in columns):
        return _without_doses(situation, recipe, Reach.BELOW)
    settings = tuple(
        _setting(situation, recipe, move, column, additions.get(move))
        for move, column in zip(recipe.moves, columns, strict=True)
    )
    reach = Reach.WITHIN
    if any(exceeds(row_pd, column.last_pd) for column in columns):
        as_printed = [effect_of(column, each.table_mm, row_pd) for column, each in zip(columns, settings, strict=True)]
        _, residual_pd = _outcome(situation, as_printed)
        if exceeds(abs(residual_pd - situation.intended_pd), LARGEST_LAST_ROW_RESIDUAL_PD):
            return _without_doses(situation, recipe, Reach.BEYOND)
        reach = Reach.LAST_ROW
    effects = [effect_of(column, each.counted_mm, row_pd) for column, each in zip(columns, settings, strict=True)]
    correction_pd, residual_pd = _outcome(situation, effects)
    return Draft(
        recipe=recipe,
        reach=reach,
        row_pd=row_pd,
        columns=columns,
        doses=tuple(
            dose(move, each, _explained(situation, recipe, column))
            for move, each, column in zip(recipe.moves, settings, columns, strict=True)
        ),
        effects=tuple(effects),
        correction_pd=correction_pd,
        residual_pd=residual_pd,
    )


def source_of(situation: Situation, recipe: Recipe) -> Table | Series:
    """What doses the recipe."""
    return recipe.series or situation.table


def _columns(situation: Situation, recipe: Recipe) -> tuple[Column, ...] | None:
    if recipe.series:
        return (recipe.series.column,) * len(recipe.moves)
    columns = situation.table.columns
    found = [columns.get((situation.direction, move.form, move.operation)) for move in recipe.moves]
    present = tuple(column for column in found if column is not None)
    return present if len(present) == len(found) else None


def _without_doses(situation: Situation, recipe: Recipe, reach: Reach) -> Draft:
    return Draft(
        recipe=recipe,
        reach=reach,
        row_pd=recipe.row_pd(situation.dosed_pd),
        columns=(),
        doses=(),
        effects=(),
        correction_pd=0.0,
        residual_pd=round(situation.target.horizontal_pd, 1) + 0.0,
    )


def _setting(situation: Situation, recipe: Recipe, move: Move, column: Column, added: Addition | None) -> Setting:
    wanted = (recipe.id, move.eye, move.muscle)
    changes = situation.case.changes
    return Setting(
        table_mm=to_half_mm(_amount(situation, recipe, column).mm),
        addition=added,
        widest_mm=widest_mm(source_of(situation, recipe), move.muscle, move.operation),
        set_mm=next((each.mm for each in changes if (each.option, each.eye, each.muscle) == wanted), None),
        spent_mm=situation.spent_mm(move.eye, move.muscle, move.operation),
        place=place(situation, move.eye, move.muscle),
    )


def _amount(situation: Situation, recipe: Recipe, column: Column) -> Amount:
    amount = amount_at(column, recipe.row_pd(situation.dosed_pd))
    if amount is None:
        raise AssertionError("a column is asked only from its first row on")
    return amount


def _explained(situation: Situation, recipe: Recipe, column: Column) -> tuple[Statement, ...]:
    amount = _amount(situation, recipe, column)
    asked = steps.Asked(
        stamp=source_of(situation, recipe).stamp,
        column=column,
        recipe=recipe,
        row_pd=recipe.row_pd(situation.dosed_pd),
        target=situation.target,
        overcorrection_pd=situation.case.overcorrection_pd,
    )
    return steps.explain(asked, amount, to_half_mm(amount.mm))


def _outcome(situation: Situation, effects: list[Effect]) -> tuple[float, float]:
    deviation_pd = situation.target.horizontal_pd
    correction_pd = situation.direction.sign * fsum(effect.pd for effect in effects)
    return round(correction_pd, 1) + 0.0, round(deviation_pd - correction_pd, 1) + 0.0
