"""Whether the deviation is larger where a muscle acts: the superior rectus in up-gaze, the inferior in down-gaze."""

from __future__ import annotations

from collections.abc import Iterator

from planner.additions.vertical.hyper import Hyper, hyper_of
from planner.anatomy import Muscle
from planner.figures import pd
from planner.options.reasons.reason import Reason, common_practice, speaks_against, speaks_for
from planner.precision.limits import Direction, difference_limits_pd, limits_of
from planner.precision.steady import steady
from planner.records.examination import Gaze, Range
from planner.situation import Situation
from planner.thresholds import exceeds

WHERE_LARGEST = common_practice("the muscle is chosen in whose field the vertical deviation is largest")
FIELDS = {Muscle.SR: "up", Muscle.IR: "down"}


def reasons(situation: Situation, found: Hyper, muscle: Muscle) -> Iterator[Reason]:
    """For a muscle that acts where the deviation is larger, against the other, if the two gazes really differ."""
    up_pd, down_pd = (hyper_of(situation, found.higher, gaze) for gaze in (Gaze.UP, Gaze.DOWN))
    if up_pd is None or down_pd is None:
        return
    limits = [limits_of(each, Range.DISTANCE, direction=Direction.VERTICAL) for each in (up_pd, down_pd)]
    difference_pd = steady(up_pd - down_pd, 1)
    if not exceeds(abs(difference_pd), difference_limits_pd(*limits)):
        return
    larger = "up" if difference_pd > 0 else "down"
    text = f"The hyper is {pd(difference_pd)} larger in {larger}-gaze, where the {muscle.words} acts"
    if FIELDS[muscle] == larger:
        yield speaks_for("acts_where_larger", f"{text} most.", WHERE_LARGEST, difference_pd=abs(difference_pd))
    else:
        yield speaks_against("acts_where_smaller", f"{text} least.", WHERE_LARGEST, difference_pd=abs(difference_pd))
