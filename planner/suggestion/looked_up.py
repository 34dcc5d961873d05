"""The table's dose, looked up at another angle than the measured one."""

from __future__ import annotations

from dataclasses import dataclass

from planner.dosing.draft import Draft, draft
from planner.dosing.recipe import Recipe
from planner.options import augmentation
from planner.situation import Situation


@dataclass(frozen=True, kw_only=True)
class LookedUp(Situation):
    """A situation of which the table is asked at ``factor`` times the angle; all else is as it was measured."""

    factor: float

    @property
    def dosed_pd(self) -> float:
        """The angle at which the table is looked up."""
        return self.factor * (self.size_pd + self.case.overcorrection_pd)


def look_up(situation: Situation, recipe: Recipe, factor: float) -> Draft:
    """The recipe's doses at ``factor`` times the angle, with what the engine adds at the measured one."""
    asked = LookedUp(
        case=situation.case,
        table=situation.table,
        measurements=situation.measurements,
        target=situation.target,
        findings=situation.findings,
        factor=factor,
    )
    return draft(asked, recipe, augmentation.additions(situation, recipe))
