"""What the option is expected to leave, or to overdo."""

from __future__ import annotations

from collections.abc import Iterator

from planner.direction import direction_of
from planner.dosing.draft import Draft
from planner.figures import pd
from planner.rules.small_angle import SUCCESS, SUCCESS_PD
from planner.situation import Situation
from planner.thresholds import exceeds
from planner.values.statement import Level, Notice


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A caution where more than 10 Δ are expected to remain, in either direction."""
    residual_pd = draft.residual_pd
    if not exceeds(abs(residual_pd), SUCCESS_PD):
        return
    left = direction_of(residual_pd)
    over = left is not situation.direction
    what = f"an overcorrection, {left}," if over else f"an {left} residual"
    yield Notice(
        code="large_overcorrection" if over else "large_residual",
        text=f"Expected: {what} of {pd(residual_pd)}, beyond the {pd(SUCCESS_PD)} usually counted as success.",
        provenance=SUCCESS,
        facts={"residual_pd": residual_pd, "limit_pd": SUCCESS_PD},
        level=Level.CAUTION,
    )
