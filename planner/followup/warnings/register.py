"""All warnings of a visit."""

from __future__ import annotations

from planner.followup.aftercare import Aftercare, Visited
from planner.followup.warnings import infection, overcorrection, slipped
from planner.values.statement import Notice

MODULES = (slipped, overcorrection, infection)


def warnings_of(care: Aftercare, visited: Visited) -> tuple[Notice, ...]:
    """The warnings of one visit; no two have the same code."""
    return tuple(notice for module in MODULES for notice in module.warnings(care, visited))
