"""What an audit is asked with."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.limits import IsoDate, Length, Within
from planner.results import Reporting


@dataclass(frozen=True, kw_only=True)
class Question(Reporting):
    """Which results, and how they are shown.

    ``own`` is the name of the surgeon who asks, whose group comes first. ``only`` names the groups that are wanted in
    full; null means the first. ``clinic`` names all results together. ``untold`` counts operations that have no result,
    because their plans tell no horizontal deviation at distance. ``on`` is the day that a page names, "" none.
    """

    own: Annotated[str, Length(0, 120)] = ""
    only: Annotated[tuple[str, ...], Length(0, 400)] | None = None
    clinic: Annotated[str, Length(0, 120)] = ""
    untold: Annotated[int, Within(0, 100000, "operations")] = 0
    on: Annotated[str, IsoDate()] | None = None
