"""An overcorrection that must not wait."""

from __future__ import annotations

from collections.abc import Iterator

from planner.age import age_years
from planner.figures import pd
from planner.followup.aftercare import Aftercare, Visited
from planner.precision.limits import Direction
from planner.provenance import Mark, Provenance
from planner.records.examination import Constancy
from planner.thresholds import reaches, same
from planner.values.statement import Level, Notice

LARGE_PD = 20.0
CHILD_PD = 10.0
CHILD_YEARS = 9
LASTING_DAYS = 14
LARGE = Provenance(
    mark=Mark.FROM_MEMORY,
    source="a large overcorrection early is taught to raise the thought of a slipped muscle; 20 Δ is chosen here",
)
CHILD = Provenance(
    mark=Mark.FROM_MEMORY,
    source=(
        "a constant esotropia after surgery for exotropia is taught to endanger binocular vision and acuity while they "
        "develop; 10 Δ, two weeks and nine years are chosen here"
    ),
)


def warnings(care: Aftercare, visited: Visited) -> Iterator[Notice]:
    """Beyond what waits; of the deviation that was operated for, at whichever range it is more."""
    before = care.before.values(Direction.HORIZONTAL)
    now = visited.alignment.values(Direction.HORIZONTAL)
    if not before or not now or same(before[0][1], 0.0):
        return
    operated_for = 1 if before[0][1] > 0 else -1
    over_pd, at = max((-operated_for * value, at) for at, value in now)
    if reaches(over_pd, LARGE_PD):
        yield Notice(
            code="large_overcorrection",
            text=(
                f"Overcorrected by {pd(over_pd)} at {at}. From {pd(LARGE_PD)} on it does not wait for the next visit: "
                "test the ductions of every operated muscle and let the surgeon decide."
            ),
            provenance=LARGE,
            facts={"over_pd": over_pd, "range": at.value, "from_pd": LARGE_PD},
            level=Level.CAUTION,
        )
    if operated_for < 0 and reaches(over_pd, CHILD_PD) and _lasts_in_a_child(care, visited):
        yield Notice(
            code="constant_eso_in_child",
            text=(
                f"Esotropic by {pd(over_pd)} {_constancy_words(visited)}, {visited.days_after} days after surgery for "
                f"exotropia: in a child under {CHILD_YEARS} acuity and binocular vision are at stake. Check acuity and "
                "begin treatment by the local protocol now."
            ),
            provenance=CHILD,
            facts={"over_pd": over_pd, "days_after": float(visited.days_after), "from_pd": CHILD_PD},
            level=Level.CAUTION,
        )


def _lasts_in_a_child(care: Aftercare, visited: Visited) -> bool:
    """An unknown age may be a child's, and where nobody noted whether it comes and goes it may be constant."""
    born_on = care.plan.case.born_on
    may_be_constant = _constancy(visited) in (Constancy.CONSTANT, None)
    is_child = born_on is None or age_years(born_on, visited.follow_up.seen_on) < CHILD_YEARS
    return may_be_constant and is_child and visited.days_after >= LASTING_DAYS


def _constancy(visited: Visited) -> Constancy | None:
    examination = visited.alignment.examination
    return examination.constancy if examination is not None else None


def _constancy_words(visited: Visited) -> str:
    return (
        "all the time" if _constancy(visited) else "and perhaps all the time, for nobody noted whether it is constant"
    )
