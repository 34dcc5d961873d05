"""Another operation."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from planner.counselling.people import ALL, people
from planner.counselling.saying import origin, says
from planner.provenance import Mark, Provenance
from planner.records.plan import Plan
from planner.values.counselling import Figure, Passage

REGISTRY: Final = Provenance(mark=Mark.PUBLISHED, source="Repka et al., IRIS registry 2013-15: 6.7 % within one year")
PERCENT: Final = 6.7


def passages(_plan: Plan) -> Iterator[Passage]:
    """For everybody."""
    count = round(PERCENT)
    yield Passage(
        code="again",
        heading=says("Another operation"),
        sentences=(
            says(
                "In a large register {percent} of 100 people were operated on again within a year.",
                percent=f"{PERCENT}",
            ),
            says("Over many years it can be more. The surgeon says what is usual here."),
        ),
        origin=origin(REGISTRY),
        array=people(
            (
                (Figure.FULL, count, says("another operation within one year")),
                (Figure.OPEN, ALL - count, says("no other operation in that year")),
            )
        ),
    )
