"""Near against distance in this patient: whether an operation for distance also answers near."""

from __future__ import annotations

from dataclasses import dataclass

from planner.accommodation.near_distance import NearDistance, classify
from planner.direction import direction_of
from planner.provenance import Mark, Provenance
from planner.records.examination import Examination, Gaze, Range
from planner.values.proposal import Target
from planner.values.statement import Statement

NOT_MEASURED = Provenance(mark=Mark.MEASURED, source="no reading to compare in this examination")


@dataclass(frozen=True, kw_only=True)
class Near:
    """``excess_pd`` is how much larger the deviation is at near in its own direction; negative where it is smaller.

    None, as ``found`` is, where near was not measured with the correction that the target was measured with.
    """

    excess_pd: float | None
    found: NearDistance | None
    statement: Statement


def find(examination: Examination, target: Target) -> Near:
    """The near-distance class of the target."""
    reading = examination.reading(Gaze.PRIMARY, Range.NEAR, target.reading.correction)
    if reading is None or reading.horizontal_pd is None:
        how = f"{target.reading.correction} correction"
        text = f"Near was not measured {how}: whether it goes with distance cannot be told."
        statement = Statement(code="near_not_measured", text=text, provenance=NOT_MEASURED, facts={})
        return Near(excess_pd=None, found=None, statement=statement)
    found = classify(distance_pd=target.horizontal_pd, near_pd=reading.horizontal_pd)
    sign = direction_of(target.horizontal_pd).sign
    return Near(excess_pd=sign * found.difference_pd, found=found, statement=found.statement)
