"""A deviation that would already count as a success after surgery."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.figures import pd
from planner.provenance import Mark, Provenance
from planner.situation import Situation
from planner.thresholds import exceeds
from planner.values.statement import Level, Notice

SUCCESS_PD = 10.0
SUCCESS = Provenance(mark=Mark.COMMON_PRACTICE, source="success after surgery is usually counted as within 10 Δ")


def notices(situation: Situation, _draft: Draft) -> Iterator[Notice]:
    """A caution up to 10 Δ."""
    if not exceeds(situation.size_pd, SUCCESS_PD):
        yield Notice(
            code="already_within_success",
            text=(
                f"The deviation of {pd(situation.size_pd)} is within {pd(SUCCESS_PD)}, "
                "which is usually counted as success after surgery."
            ),
            provenance=SUCCESS,
            facts={"size_pd": situation.size_pd, "limit_pd": SUCCESS_PD},
            level=Level.CAUTION,
        )
