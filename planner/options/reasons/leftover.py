"""What the half millimetres and the end of the table leave."""

from __future__ import annotations

from collections.abc import Iterator

from planner.direction import direction_of
from planner.dosing.draft import Draft
from planner.figures import pd
from planner.options.reasons.reason import Reason, speaks_against
from planner.provenance import Mark, Provenance
from planner.situation import Situation
from planner.thresholds import exceeds

UNREMARKABLE_PD = 5.0
"""Half of the band usually counted as success: less is not worth a reason."""

EXPECTED = Provenance(mark=Mark.COMPUTED, source="the deviation less what the doses' rows answer")


def reasons(situation: Situation, draft: Draft) -> Iterator[Reason]:
    """Against an option that is expected to miss what is wanted by more than 5 Δ."""
    residual_pd = draft.residual_pd
    if exceeds(abs(residual_pd - situation.intended_pd), UNREMARKABLE_PD):
        text = f"{pd(residual_pd)} {direction_of(residual_pd)} are expected to remain."
        yield speaks_against("leaves_residual", text, EXPECTED, residual_pd=residual_pd)
