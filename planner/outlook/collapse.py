"""What an expected change of a pattern does in up-gaze and in down-gaze."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from planner.figures import pd
from planner.provenance import Mark, Provenance
from planner.records.examination import Gaze
from planner.values.option import Answers, Expected
from planner.values.statement import Statement

UP = frozenset((Gaze.UP, Gaze.UP_RIGHT, Gaze.UP_LEFT))
DOWN = frozenset((Gaze.DOWN, Gaze.DOWN_RIGHT, Gaze.DOWN_LEFT))
HALVES = Provenance(
    mark=Mark.HOUSE_RULE, source="series give the change between up-gaze and down-gaze, not how the two share it"
)


@dataclass(frozen=True, kw_only=True)
class Collapse:
    """``change_pd`` is taken from the deviation in down-gaze less that in up-gaze (V +), half of it in each."""

    change_pd: float
    spread_pd: float

    def correction_pd(self, gaze: Gaze) -> float:
        """What is removed from the deviation there beside what the horizontal doses remove."""
        if gaze in UP:
            return -self.change_pd / 2
        return self.change_pd / 2 if gaze in DOWN else 0.0

    def own_spread_pd(self, gaze: Gaze) -> float:
        """The standard deviation of that."""
        return self.spread_pd / 2 if gaze in UP or gaze in DOWN else 0.0

    @property
    def statement(self) -> Statement:
        """The assumption in words."""
        return Statement(
            code="pattern_change_halved",
            text=(
                f"The pattern's expected change of {pd(self.change_pd)} (SD {pd(self.spread_pd)}) is counted half in "
                "up-gaze and half in down-gaze."
            ),
            provenance=HALVES,
            facts={"change_pd": self.change_pd, "sd_pd": self.spread_pd},
        )


NONE = Collapse(change_pd=0.0, spread_pd=0.0)


def collapse(expected: Sequence[Expected]) -> Collapse | None:
    """The published change of the pattern, None where there is none or its scatter is not known."""
    for each in expected:
        if each.answers is Answers.PATTERN and each.correction is not None and each.spread is not None:
            return Collapse(change_pd=each.correction, spread_pd=each.spread)
    return None
