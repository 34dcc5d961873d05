"""What must be said about the reading that the plan stands on."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.situation import Situation
from planner.values.statement import Notice


def notices(situation: Situation, _draft: Draft) -> Iterator[Notice]:
    """The target's own notices: readings that disagree, a rough method, stacked prisms, an aim that is not distance."""
    yield from situation.target.notices
