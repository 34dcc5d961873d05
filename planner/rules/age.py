"""The patient's age: information on one-eye surgery for exodeviations, never a reason to change a dose."""

from __future__ import annotations

from collections.abc import Iterator
from math import fsum

from planner.age import age_years
from planner.direction import Direction
from planner.dosing.draft import Draft
from planner.figures import mm
from planner.precision.steady import steady
from planner.provenance import Mark, Provenance
from planner.situation import Situation
from planner.values.option import Family
from planner.values.statement import Level, Notice

LAI = Provenance(
    mark=Mark.PUBLISHED,
    source="Lai et al., J Formos Med Assoc 2025: one eye, children 2.82 ± 0.60, adults 3.02 ± 0.62 Δ/mm",
)
ADULT_FROM_YEARS = 18
CHILD_PD_PER_MM, ADULT_PD_PER_MM = 2.82, 3.02


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A note on recess and resect in one eye where the age is known."""
    born_on = situation.case.born_on
    if born_on is None or situation.direction is not Direction.EXO or draft.recipe.family is not Family.ONE_EYE:
        return
    years = age_years(born_on, situation.examination.examined_on)
    grown = years >= ADULT_FROM_YEARS
    per_mm = ADULT_PD_PER_MM if grown else CHILD_PD_PER_MM
    total_mm = fsum(dose.figure_mm for dose in draft.doses)
    effect_pd = steady(per_mm * total_mm, 1)
    yield Notice(
        code="age_and_effect",
        text=(
            f"{'Adults' if grown else 'Children'} had {per_mm:g} Δ/mm in a series of one-eye surgery: {mm(total_mm)} "
            f"in all would correct {effect_pd:g} Δ. The dose is not changed."
        ),
        provenance=LAI,
        facts={"age_years": float(years), "pd_per_mm": per_mm, "total_mm": total_mm, "effect_pd": effect_pd},
        level=Level.NOTE,
    )
