"""A near deviation that an operation for distance would not answer."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.figures import pd
from planner.provenance import Mark, Provenance
from planner.situation import Situation
from planner.thresholds import exceeds, reaches
from planner.values.statement import Level, Notice

DIFFERENT_PD = 10.0
VERY_DIFFERENT_PD = 20.0

STEPS = Provenance(
    mark=Mark.PUBLISHED,
    source="PMC6825697 (RCT, n = 100): esotropia 10 to 20 Δ and more than 20 Δ larger at near were dosed apart",
)
ALIKE = Provenance(mark=Mark.FROM_MEMORY, source="the 10 Δ rule, its steps used for every near-distance difference")


def notices(situation: Situation, _draft: Draft) -> Iterator[Notice]:
    """A note from 10 Δ on, a caution above 20 Δ; the dose is made for distance."""
    excess_pd = situation.findings.near.excess_pd
    if excess_pd is None or not reaches(abs(excess_pd), DIFFERENT_PD):
        return
    very = exceeds(abs(excess_pd), VERY_DIFFERENT_PD)
    eso_near_excess = excess_pd > 0 and situation.target.horizontal_pd > 0
    size = "larger" if excess_pd > 0 else "smaller"
    yield Notice(
        code="near_very_different" if very else "near_different",
        text=f"The deviation is {pd(excess_pd)} {size} at near; the doses answer the distance reading alone.",
        provenance=STEPS if eso_near_excess else ALIKE,
        facts={"near_excess_pd": excess_pd},
        level=Level.CAUTION if very else Level.NOTE,
    )
