"""When a patient or parent must not wait for the next visit."""

from __future__ import annotations

from planner.counselling.days import COMMON
from planner.counselling.saying import origin, says
from planner.values.counselling import Passage


def call() -> Passage:
    """One sentence for each sign."""
    return Passage(
        code="call",
        heading=says("Call or come at once, by day or night"),
        sentences=(
            says("Pain that grows instead of getting less"),
            says("Sight that becomes worse"),
            says("Lids that swell more and more, or pus from the eye"),
            says("Fever, or a child who becomes drowsy or will not drink"),
            says("An eye that suddenly turns far, or can no longer be moved to one side"),
            says("Double vision that is new, or that does not go away"),
            says("Vomiting that does not stop"),
        ),
        origin=origin(COMMON),
    )
