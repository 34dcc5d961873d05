"""What a series of lateral rectus resections after large medial rectus recessions corrected."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Eye, Muscle
from planner.direction import Direction
from planner.dosing.draft import Draft
from planner.provenance import Mark, Provenance
from planner.records.examination import PastOperation
from planner.situation import Situation
from planner.values.option import Operation
from planner.values.statement import Level, Notice

ONE_EYE_UP_TO_PD = 15.0

SERIES = Provenance(
    mark=Mark.PUBLISHED,
    source=(
        "38 children after MR recessions of 5.5-6.5 mm, summarised by the American Academy of Ophthalmology (Editors' "
        "Choice): one LR up to 15 Δ, both above"
    ),
)


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A note on resections of the lateral rectus of an eye whose medial rectus was recessed."""
    resected = {dose.eye for dose in draft.doses if (dose.muscle, dose.operation) == (Muscle.LR, Operation.RESECT)}
    if situation.direction is Direction.ESO and any(was_recessed(situation, eye) for eye in resected):
        yield Notice(
            code="residual_series",
            text=(
                "After large medial recessions one lateral resection of 4 to 7 mm corrected 10.5 to 14.9 Δ on average, "
                "without a clear response to the dose; both by 5, 6 and 7 mm corrected 19.75, 28.75 and 33.5 Δ."
            ),
            provenance=SERIES,
            facts={"one_eye_up_to_pd": ONE_EYE_UP_TO_PD},
            level=Level.NOTE,
        )


def was_recessed(situation: Situation, eye: Eye) -> bool:
    """Whether the eye's medial rectus was recessed before."""
    return any(each.operation is PastOperation.RECESS for each in situation.earlier(eye, Muscle.MR))
