"""What several days and teams need in all: for an outreach week."""

from __future__ import annotations

from collections.abc import Sequence

from planner.disclaimer import DISCLAIMER
from planner.kit.counting import kit
from planner.kit.spare import spare_words
from planner.kit.uncounted import uncounted, uncounted_notices
from planner.records.practice import Practice
from planner.setup.figures import figures as figures_of
from planner.setup.figures import source
from planner.values.kit import PackedDay, Packing, TeamDay
from planner.version import ENGINE_VERSION


def packing(days: Sequence[TeamDay], practice: Practice | None) -> Packing:
    """Days in order, what could not be counted, then the kit of all."""
    figures = figures_of(practice)
    in_order = sorted(days, key=lambda day: (day.on, day.team, day.place))
    left_out = uncounted(in_order)
    return Packing(
        days=tuple(PackedDay(on=day.on, team=day.team, place=day.place, operations=len(day.cases)) for day in in_order),
        operations=sum(len(day.cases) for day in days),
        not_counted=left_out,
        notices=uncounted_notices(left_out),
        kit=kit(in_order, figures),
        spare_words=spare_words(figures),
        practice_words=source(practice),
        engine_version=ENGINE_VERSION,
        disclaimer=DISCLAIMER,
    )
