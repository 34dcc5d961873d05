"""A near deviation that an operation for distance would not answer, or answers by more medial rectus recession."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Muscle
from planner.direction import Direction
from planner.dosing.draft import Draft
from planner.figures import pd
from planner.provenance import Mark, Provenance
from planner.records.examination import Range
from planner.situation import Situation
from planner.thresholds import exceeds, reaches
from planner.values.option import Operation
from planner.values.statement import Level, Notice

DIFFERENT_PD = 10.0
VERY_DIFFERENT_PD = 20.0

STEPS = Provenance(
    mark=Mark.PUBLISHED,
    source="PMC6825697 (RCT, n = 100): esotropia 10 to 20 Δ and more than 20 Δ larger at near were dosed apart",
)
ALIKE = Provenance(mark=Mark.FROM_MEMORY, source="the 10 Δ rule, its steps used for every near-distance difference")
POSTERIOR_FIXATION = Provenance(
    mark=Mark.PUBLISHED,
    source=(
        "randomised comparison of augmented recession, posterior fixation and slanted recession in high AC/A esotropia "
        "(n = 28): near-distance disparity afterwards 7.55 ± 3.87, 2.55 ± 4.03 and 4.10 ± 4.80 Δ"
    ),
)


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A note from 10 Δ on, a caution above 20 Δ and where an esodeviation larger at near is not answered there.

    And a note on posterior fixation where it is.
    """
    excess_pd = situation.findings.near.excess_pd
    at_distance = situation.target.reading.range is Range.DISTANCE
    if excess_pd is None or not at_distance or not reaches(abs(excess_pd), DIFFERENT_PD):
        return
    eso_near_excess = excess_pd > 0 and situation.direction is Direction.ESO
    recessed = any((dose.muscle, dose.operation) == (Muscle.MR, Operation.RECESS) for dose in draft.doses)
    very = exceeds(abs(excess_pd), VERY_DIFFERENT_PD)
    yield Notice(
        code="near_very_different" if very else "near_different",
        text=f"The deviation is {pd(excess_pd)} {'larger' if excess_pd > 0 else 'smaller'} at near; {_what(draft)}",
        provenance=STEPS if eso_near_excess else ALIKE,
        facts={"near_excess_pd": excess_pd},
        level=Level.CAUTION if very or (eso_near_excess and not recessed) else Level.NOTE,
    )
    if eso_near_excess and recessed:
        yield Notice(
            code="posterior_fixation",
            text=(
                "Posterior fixation of the recessed medial rectus, or a slanted recession, are other answers to the "
                "larger near deviation; neither is dosed here."
            ),
            provenance=POSTERIOR_FIXATION,
            facts={},
            level=Level.NOTE,
        )


def _what(draft: Draft) -> str:
    if any(dose.adjustment_mm for dose in draft.doses):
        return (
            "the medial recessions are larger for it, which the expected result, for distance, leaves out. In the "
            "trial the difference fell by 8.64 ± 6.1 Δ."
        )
    return "the doses answer the distance reading alone."
