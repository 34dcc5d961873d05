"""A target that was measured without the spectacles."""

from __future__ import annotations

from collections.abc import Iterator

from planner.direction import Direction
from planner.dosing.draft import Draft
from planner.provenance import Mark, Provenance
from planner.records.examination import Correction
from planner.situation import Situation
from planner.values.statement import Level, Notice

FULL_CORRECTION = Provenance(
    mark=Mark.COMMON_PRACTICE, source="surgery answers what the full optical correction leaves of an esodeviation"
)


def notices(situation: Situation, _draft: Draft) -> Iterator[Notice]:
    """A note for esodeviations, where focusing may be a part of the angle."""
    without = situation.target.reading.correction is Correction.WITHOUT
    if without and situation.direction is Direction.ESO:
        yield Notice(
            code="measured_without_correction",
            text="The angle was measured without correction: a part that glasses would take away may be in it.",
            provenance=FULL_CORRECTION,
            facts={},
            level=Level.NOTE,
        )
