"""A dose that the widest maximum does not reach."""

from __future__ import annotations

from planner.additions.dose import Wanted
from planner.dosing.rounding import to_half_mm
from planner.figures import mm
from planner.maxima import CONVENTIONAL
from planner.values.statement import Level, Notice


def beyond(wanted: Wanted) -> Notice:
    """The widest maximum does not reach: a stop, for there is no dose."""
    asked_mm = to_half_mm(wanted.share_pd / wanted.slope.pd_per_mm)
    what = f"{wanted.eye.capitalize()} eye: {wanted.muscle.words} {wanted.operation.noun}"
    return Notice(
        code=f"beyond_widest_maximum-{wanted.eye}-{wanted.muscle.lower()}",
        text=f"{what} of {mm(asked_mm)} would be above the widest maximum of {mm(wanted.widest_mm)}: no dose is given.",
        provenance=CONVENTIONAL,
        facts={"asked_mm": asked_mm, "limit_mm": wanted.widest_mm},
        level=Level.STOP,
    )
