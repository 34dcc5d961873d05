"""Which published spread stands for a horizontal operation.

Published for it: one-eye recess-resect in exotropia by age, one MR recession by its millimetres, three muscles in
esotropia. For every other operation the nearest of these is borrowed, and the answer says so.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import fsum

from planner.anatomy import Muscle
from planner.prediction.spread import SPREADS, Spread
from planner.provenance import Mark, Provenance
from planner.values.option import Dose, Operation
from planner.values.statement import Statement

ADULT_YEARS = 18
SMALL_ET_PD = 20.0
THREE_MUSCLES = 3
TWO_MUSCLES = 2
BORROWING = Provenance(
    mark=Mark.HOUSE_RULE, source="the nearest published series stands in where none is of this operation"
)


@dataclass(frozen=True, kw_only=True)
class ChosenSpread:
    """The spread used for an operation; ``reason`` says whether it was published for it or borrowed."""

    spread: Spread
    total_mm: float
    reason: Statement

    @property
    def sd_pd(self) -> float:
        """The spread in prism dioptres."""
        return self.spread.sd_pd(self.total_mm)


def horizontal_spread(doses: Sequence[Dose], deviation_pd: float, age_years: float | None) -> ChosenSpread:
    """The spread for an operation on horizontal recti for a deviation (eso +).

    Without an age the adults' figure is used, which is the wider.
    """
    total_mm = fsum(dose.figure_mm for dose in doses)
    id_, own = _esotropia(doses, deviation_pd) if deviation_pd > 0 else _exotropia(doses, age_years)
    spread = SPREADS[id_]
    text = (
        f"Spread as published for {spread.words}."
        if own
        else f"No spread is published for it; {spread.words} stand in."
    )
    reason = Statement(
        code="spread_published" if own else "spread_borrowed",
        text=text,
        provenance=spread.provenance if own else BORROWING,
        facts={"spread": spread.id, "sd": spread.sd, "unit": spread.unit.value, "source": spread.provenance.source},
    )
    return ChosenSpread(spread=spread, total_mm=total_mm, reason=reason)


def _exotropia(doses: Sequence[Dose], age_years: float | None) -> tuple[str, bool]:
    child = age_years is not None and age_years < ADULT_YEARS
    own = len(doses) == TWO_MUSCLES and len({dose.eye for dose in doses}) == 1
    return ("xt-one-eye-child" if child else "xt-one-eye-adult"), own


def _esotropia(doses: Sequence[Dose], deviation_pd: float) -> tuple[str, bool]:
    if len(doses) == 1 and doses[0].muscle is Muscle.MR and doses[0].operation is Operation.RECESS:
        graded = f"single-mr-recess-{doses[0].mm:.1f}"
        if graded == "single-mr-recess-6.0" and deviation_pd <= SMALL_ET_PD:
            return "single-mr-recess-6.0-small", True
        if graded in SPREADS:
            return graded, True
    return "et-three-muscles", len(doses) == THREE_MUSCLES
