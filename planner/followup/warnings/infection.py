"""Signs of infection, and the days in which they are looked for."""

from __future__ import annotations

from collections.abc import Iterator

from planner.figures import inside
from planner.followup.aftercare import Aftercare, Visited
from planner.provenance import Mark, Provenance
from planner.records.follow_up import InfectionSeen, InfectionSign
from planner.values.statement import Level, Notice

FIRST_DAY, LAST_DAY = 2, 6
DAYS = Provenance(
    mark=Mark.FROM_MEMORY,
    source="infections of the orbit and of the eye are taught to begin in the first week, most from day 2 to day 6",
)
ALWAYS = Provenance(mark=Mark.COMMON_PRACTICE, source="signs of infection after an operation are seen on the same day")


def warnings(_care: Aftercare, visited: Visited) -> Iterator[Notice]:
    """That signs were seen; that of the eye itself is said by itself, for hours count there."""
    signs = visited.follow_up.infection_signs or ()
    if not signs:
        return
    words = "; ".join(sorted(map(_words, signs)))
    days = f"{visited.days_after} {'day' if visited.days_after == 1 else 'days'}"
    facts = {"days_after": float(visited.days_after), "signs": float(len(signs))}
    yield Notice(
        code="infection_signs",
        text=f"Signs of infection {days} after the operation: {words}. They are looked at today.",
        provenance=ALWAYS,
        facts=facts,
        level=Level.CAUTION,
    )
    if any(each.sign is InfectionSign.VISION for each in signs):
        yield Notice(
            code="vision_dropped",
            text="Vision has dropped as well: look into the eye today, an infection inside it is a matter of hours.",
            provenance=DAYS,
            facts=facts,
            level=Level.CAUTION,
        )


def window(care: Aftercare) -> Iterator[Notice]:
    """On the days in which an infection usually begins, unless somebody has looked today."""
    if care.today is None or not FIRST_DAY <= care.days_after(care.today) <= LAST_DAY:
        return
    looked_on = [each.follow_up.seen_on for each in care.attended if each.follow_up.infection_signs is not None]
    if care.today in looked_on:
        return
    yield Notice(
        code="infection_window",
        text=(
            f"Day {care.days_after(care.today)} after the operation: from day {FIRST_DAY} to day {LAST_DAY} ask for "
            "growing pain, swollen lids, discharge, fever and a drop of vision, by telephone if need be."
        ),
        provenance=DAYS,
        facts={"first_day": float(FIRST_DAY), "last_day": float(LAST_DAY)},
        level=Level.NOTE,
    )


def _words(seen: InfectionSeen) -> str:
    return seen.sign.value if seen.eye is None else f"{seen.eye} eye: {inside(seen.sign.value)}"
