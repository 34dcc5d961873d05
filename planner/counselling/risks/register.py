"""The risks in the order of the page: what people meet most first."""

from __future__ import annotations

from planner.counselling.risks import again, double_vision, infection, ischaemia, muscle, perforation, pulse
from planner.records.plan import Plan
from planner.values.counselling import Passage

REGISTER = (again, double_vision, infection, muscle, perforation, ischaemia, pulse)


def risks(plan: Plan) -> tuple[Passage, ...]:
    """Those that this plan carries."""
    return tuple(passage for each in REGISTER for passage in each.passages(plan))
