"""All additions of a situation, by what they answer, best first."""

from __future__ import annotations

from planner.additions import dissociated, obliques, patterns, torsion, vertical
from planner.additions.judging import judged
from planner.options.order import in_order
from planner.situation import Situation
from planner.values.option import Answers, Option

FAMILIES = (vertical, obliques, dissociated, torsion, patterns)


def offer(situation: Situation) -> tuple[Option, ...]:
    """The options beside the horizontal ones: vertical, dissociated, torsion, pattern, each kind in its own order."""
    options = [judged(situation, part) for family in FAMILIES for part in family.parts(situation)]
    return tuple(
        option
        for kind in Answers
        for option in in_order([each for each in options if each.answers is kind], situation.intended_pd)
    )
