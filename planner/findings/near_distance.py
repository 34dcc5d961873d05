"""Near against distance in this patient: whether an operation for distance also answers near."""

from __future__ import annotations

from dataclasses import dataclass

from planner.accommodation.near_distance import NearDistance, NearTests, classify
from planner.direction import direction_of
from planner.findings.finding import finding
from planner.measurement import Figure, Measurements
from planner.provenance import Mark, Provenance
from planner.records.examination import Correction, Gaze, Range
from planner.records.technique import Condition
from planner.values.statement import Finding, Strength

NOT_MEASURED = Provenance(mark=Mark.MEASURED, source="no reading to compare in this examination")


@dataclass(frozen=True, kw_only=True)
class Near:
    """``excess_pd`` is how much larger the deviation is at near in its own direction; negative where it is smaller.

    Its direction is that of distance, of near where distance is straight. None, as ``found`` is, where distance and
    near were not both measured with the same correction.
    """

    excess_pd: float | None
    found: NearDistance | None
    statement: Finding


def find(measurements: Measurements, correction: Correction) -> Near:
    """The near-distance class, by the tests that were made."""
    distance = measurements.horizontal(Gaze.PRIMARY, Range.DISTANCE, correction)
    near = measurements.horizontal(Gaze.PRIMARY, Range.NEAR, correction)
    if distance is None or near is None:
        missing = "Distance" if distance is None else "Near"
        statement = Finding(
            code="near_not_measured",
            text=f"{missing} was not measured {correction} correction: whether it goes with "
            f"{'near' if distance is None else 'distance'} cannot be told.",
            provenance=NOT_MEASURED,
            facts={},
            strength=Strength.CANNOT_TELL,
            settle=f"Measure the primary position at {missing.lower()} {correction} correction.",
        )
        return Near(excess_pd=None, found=None, statement=statement)
    tests = NearTests(
        patched_pd=_value(measurements.horizontal(Gaze.PRIMARY, Range.NEAR, correction, Condition.AFTER_PATCHING)),
        plus_three_pd=_value(measurements.horizontal(Gaze.PRIMARY, Range.NEAR, correction, Condition.THROUGH_PLUS_3)),
    )
    found = classify(distance_pd=distance.value_pd, near_pd=near.value_pd, tests=tests)
    sign = direction_of(distance.value_pd or near.value_pd).sign
    return Near(
        excess_pd=sign * found.difference_pd,
        found=found,
        statement=finding(found.statement, found.strength, found.settle),
    )


def _value(figure: Figure | None) -> float | None:
    return figure.value_pd if figure else None
