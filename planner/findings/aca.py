"""AC/A both ways: from near against distance, and from what a lens changes."""

from __future__ import annotations

from collections.abc import Iterator

from planner.accommodation.ratio import AcaClass, AcaRatio, gradient_aca, heterophoria_aca
from planner.findings.finding import finding
from planner.measurement import Measurements
from planner.records.examination import Correction, Gaze, Range
from planner.records.technique import Condition
from planner.values.statement import Finding, Strength

GRADIENTS = ((Range.NEAR, Condition.THROUGH_PLUS_3, 3.0), (Range.DISTANCE, Condition.THROUGH_MINUS_3, -3.0))
"""Where a lens is used and its power, dioptres."""

MORE = "Measure each deviation again, and the ratio the other way too: with a lens, or from near and distance."


def find(measurements: Measurements, correction: Correction) -> Iterator[Finding]:
    """The heterophoria ratio where the pupil distance is known, and a gradient for each lens that was used."""
    distance = measurements.horizontal(Gaze.PRIMARY, Range.DISTANCE, correction)
    near = measurements.horizontal(Gaze.PRIMARY, Range.NEAR, correction)
    pupil_distance_mm = measurements.examination.pupil_distance_mm
    if distance and near and pupil_distance_mm is not None:
        yield _finding(
            heterophoria_aca(distance_pd=distance.value_pd, near_pd=near.value_pd, pupil_distance_mm=pupil_distance_mm)
        )
    for at, condition, lens_d in GRADIENTS:
        without = measurements.horizontal(Gaze.PRIMARY, at, correction)
        through = measurements.horizontal(Gaze.PRIMARY, at, correction, condition)
        if without and through:
            yield _finding(
                gradient_aca(without_lens_pd=without.value_pd, with_lens_pd=through.value_pd, lens_d=lens_d, at=at)
            )


def _finding(ratio: AcaRatio) -> Finding:
    settle = "" if ratio.strength is Strength.CLEAR or ratio.aca_class is AcaClass.NORMAL else MORE
    return finding(ratio.statement, ratio.strength, settle)
