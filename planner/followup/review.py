"""A visit before it is saved: what keeps it from that, and what must not wait of it."""

from __future__ import annotations

from dataclasses import replace

from planner.errors import Fault
from planner.followup.aftercare import Aftercare, Attended
from planner.followup.course import course
from planner.followup.hindrances import hindrances
from planner.values.follow_up import Kept, VisitReview


def review(care: Aftercare, attended: Attended) -> VisitReview:
    """``care`` is the operation with its other visits, ``attended`` the visit with the examination that it names."""
    found = _kept(care, attended)
    return VisitReview(
        hindrances=(*_unexamined(attended), *hindrances(attended.follow_up, care.operation, attended.examination)),
        warnings=found.warnings,
        statements=found.statements,
    )


def _kept(care: Aftercare, attended: Attended) -> Kept:
    (kept,) = course(replace(care, attended=(attended,))).visits
    return kept


def _unexamined(attended: Attended) -> tuple[Fault, ...]:
    """A visit may be kept without a measurement, but not with one that is only named."""
    if (attended.follow_up.examination_id is None) == (attended.examination is None):
        return ()
    return (
        Fault(
            code="examination_missing",
            text="The examination of this visit is not here.",
            field="examination_id",
            value=attended.follow_up.examination_id or "",
            allowed="an examination that this device holds",
        ),
    )
