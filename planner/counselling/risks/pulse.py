"""A pulse that slows while a muscle is held."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from planner.counselling.people import ALL, people
from planner.counselling.saying import origin, says
from planner.provenance import Mark, Provenance
from planner.records.plan import Plan
from planner.values.counselling import Figure, Passage

REFLEX: Final = Provenance(
    mark=Mark.PUBLISHED, source="several series of the oculocardiac reflex: 30 to 85 %, by its definition"
)
LOW, HIGH = 30, 85


def passages(_plan: Plan) -> Iterator[Passage]:
    """For everybody."""
    yield Passage(
        code="pulse",
        heading=says("A slow pulse during the operation, and the anaesthetic"),
        sentences=(
            says(
                "The pulse slows for a moment in {low} to {high} of 100 people, by how it is counted. It is watched.",
                low=f"{LOW}",
                high=f"{HIGH}",
            ),
            says("The anaesthetist explains the risks of the anaesthetic itself."),
        ),
        origin=origin(REFLEX),
        array=people(
            (
                (Figure.FULL, LOW, says("the pulse slows, in the report with the fewest")),
                (Figure.BARRED, HIGH - LOW, says("the pulse slows, in the report with the most")),
                (Figure.OPEN, ALL - HIGH, says("the pulse does not slow")),
            )
        ),
    )
