"""Too little blood at the front of the eye, where the vessels of three muscles are cut."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from planner.counselling.people import ALL, people
from planner.counselling.saying import origin, says
from planner.records.plan import Plan
from planner.rules.recti import ISCHAEMIA
from planner.statistics import proportion
from planner.values.counselling import Figure, Passage

SEEN, OPERATED = 2, 87
CODES: Final = ("three_recti-", "recti_with_earlier-")


def passages(plan: Plan) -> Iterator[Passage]:
    """Where the plan carries the caution, by the rule that knows what was operated on earlier."""
    if not any(notice.code.startswith(CODES) for notice in plan.option.notices):
        return
    found = proportion(SEEN, OPERATED)
    share, low, high = (100 * (figure or 0.0) for figure in (found.share, found.low, found.high))
    most = round(high)
    yield Passage(
        code="ischaemia",
        heading=says("Too little blood at the front of the eye"),
        sentences=(
            says("Three muscles of one eye will have been operated on. They carry blood to the front of the eye."),
            says(
                "In one report it happened to {seen} of {operated} people. The true number may lie between {low} and "
                "{high} of 100.",
                seen=f"{SEEN}",
                operated=f"{OPERATED}",
                low=f"{low:.1f}",
                high=f"{high:.1f}",
            ),
        ),
        origin=origin(ISCHAEMIA),
        array=people(
            (
                (Figure.FULL, round(share), says("too little blood, as in the report")),
                (Figure.BARRED, most - round(share), says("perhaps as well: the report was small")),
                (Figure.OPEN, ALL - most, says("not affected")),
            )
        ),
    )
