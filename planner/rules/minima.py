"""The least that is worth doing to a muscle."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Muscle
from planner.dosing.draft import Draft
from planner.figures import mm
from planner.provenance import Mark, Provenance
from planner.rules.alike import alike
from planner.situation import Situation
from planner.thresholds import exceeds
from planner.values.option import Operation
from planner.values.statement import Level, Notice

USEFUL = Provenance(
    mark=Mark.FROM_MEMORY,
    source="useful minima of standard teaching: MR recession 2.5-3, LR recession 4, vertical 2-2.5 mm",
)

MINIMA_MM = {
    (Muscle.MR, Operation.RECESS): 2.5,
    (Muscle.LR, Operation.RECESS): 4.0,
    (Muscle.SR, Operation.RECESS): 2.0,
    (Muscle.SR, Operation.RESECT): 2.0,
    (Muscle.IR, Operation.RECESS): 2.0,
    (Muscle.IR, Operation.RESECT): 2.0,
}
"""The lower end of each range that is taught; nothing is taught for horizontal resections."""


def notices(_situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A caution below the useful minimum."""
    for each in alike(draft.doses):
        least_mm = MINIMA_MM.get((each.muscle, each.operation), 0.0)
        if exceeds(least_mm, each.mm):
            yield Notice(
                code=f"below_useful_minimum-{each.tag}",
                text=f"{each.where}: a {each.what} is below {mm(least_mm)}, the least that is usually worth doing.",
                provenance=USEFUL,
                facts={
                    "muscle": each.muscle.value,
                    "operation": each.operation.value,
                    "mm": each.mm,
                    "limit_mm": least_mm,
                },
                level=Level.CAUTION,
            )
