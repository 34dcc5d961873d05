"""The early overcorrection that a surgeon may want, which is meant for intermittent exodeviations alone."""

from __future__ import annotations

from planner.direction import Direction
from planner.errors import Fault, Refused
from planner.records.examination import Constancy
from planner.situation import Situation


def check(situation: Situation) -> None:
    """Raise :class:`Refused` with ``overcorrection_not_meant`` where the deviation is another one."""
    wanted_pd = situation.case.overcorrection_pd
    intermittent = situation.examination.constancy is Constancy.INTERMITTENT
    if wanted_pd and not (situation.direction is Direction.EXO and situation.size_pd and intermittent):
        raise Refused(
            Fault(
                code="overcorrection_not_meant",
                text="An early overcorrection is aimed at in intermittent exodeviations only.",
                field="overcorrection_pd",
                value=f"{wanted_pd:g}",
                allowed="0, or an exodeviation that is recorded as intermittent",
            )
        )
