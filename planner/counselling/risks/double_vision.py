"""Seeing double."""

from __future__ import annotations

from collections.abc import Iterator

from planner.counselling.days import COMMON
from planner.counselling.saying import origin, says
from planner.records.plan import Plan
from planner.values.counselling import Passage


def passages(_plan: Plan) -> Iterator[Passage]:
    """For everybody; no figure was found."""
    yield Passage(
        code="double_vision",
        heading=says("Seeing double"),
        sentences=(
            says("The eyes may see double after the operation. It often fades as the eyes get used to each other."),
            says("It can last and then need prisms, patching or another operation. No figure is given here."),
        ),
        origin=origin(COMMON),
    )
