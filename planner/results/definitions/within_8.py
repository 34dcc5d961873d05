"""Within 8 Δ of straight at distance."""

from planner.provenance import Mark, Provenance
from planner.results.definitions.definition import Definition, at_last_visit, everybody
from planner.results.result import Seen

LIMIT_PD = 8.0


def met(seen: Seen) -> bool:
    """The deviation at distance is at most :data:`LIMIT_PD`."""
    return abs(seen.distance_pd) <= LIMIT_PD


DEFINITION = Definition(
    id="within-8",
    words="within 8 Δ of straight at distance",
    provenance=Provenance(mark=Mark.COMMON_PRACTICE, source="some count success within 8 Δ"),
    concerns=everybody,
    judge=at_last_visit(met),
)
