"""A muscle that slips, or a scar that shows."""

from __future__ import annotations

from collections.abc import Iterator

from planner.counselling.days import COMMON
from planner.counselling.saying import origin, says
from planner.records.plan import Plan
from planner.values.counselling import Passage


def passages(_plan: Plan) -> Iterator[Passage]:
    """For everybody; no figure was found."""
    yield Passage(
        code="muscle",
        heading=says("A muscle that slips, and scars"),
        sentences=(
            says("A muscle can slip from its new place; the eye then turns and must be operated on again soon."),
            says("The white of the eye can stay reddish or thickened where it was operated. No figure is given here."),
        ),
        origin=origin(COMMON),
    )
