"""All warnings of a visit, and those that still stand after several."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from planner.followup.aftercare import Aftercare, Visited
from planner.followup.warnings import infection, overcorrection, slipped
from planner.values.statement import Notice

OF_ALIGNMENT = (slipped, overcorrection)
OF_SIGNS = (infection,)


def warnings_of(care: Aftercare, visited: Visited) -> tuple[Notice, ...]:
    """The warnings of one visit; no two have the same code."""
    return tuple(notice for module in (*OF_ALIGNMENT, *OF_SIGNS) for notice in module.warnings(care, visited))


def standing_warnings(care: Aftercare, visits: Sequence[Visited]) -> tuple[Notice, ...]:
    """Those of the latest visit at which it was looked: a visit without a measurement clears no alignment."""
    measured = _latest(each for each in visits if each.alignment.measurements is not None)
    looked = _latest(each for each in visits if each.follow_up.infection_signs is not None)
    return (
        *(notice for module in OF_ALIGNMENT for each in measured for notice in module.warnings(care, each)),
        *(notice for module in OF_SIGNS for each in looked for notice in module.warnings(care, each)),
    )


def _latest(visits: Iterable[Visited]) -> tuple[Visited, ...]:
    """The last of them, as a row of one or none."""
    return tuple(visits)[-1:]
