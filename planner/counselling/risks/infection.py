"""Infection, and a loss of sight."""

from __future__ import annotations

from collections.abc import Iterator

from planner.counselling.saying import origin, says
from planner.followup.warnings.infection import DAYS, FIRST_DAY, LAST_DAY
from planner.records.plan import Plan
from planner.values.counselling import Passage


def passages(_plan: Plan) -> Iterator[Passage]:
    """For everybody; no figure was found of how often, and the days are from memory."""
    yield Passage(
        code="infection",
        heading=says("Infection"),
        sentences=(
            says(
                "The wound, or worse the eye itself, can become infected, mostly from day {first} to day {last}.",
                first=f"{FIRST_DAY}",
                last=f"{LAST_DAY}",
            ),
            says("An infection inside the eye can cost its sight. No figure is given here. See when to call."),
        ),
        origin=origin(DAYS),
    )
