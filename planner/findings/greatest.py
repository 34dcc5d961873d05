"""In which gaze the deviation is greatest, horizontal and vertical as one, and the vertical in side gaze."""

from __future__ import annotations

from collections.abc import Iterator

from planner.figures import inside, pd
from planner.findings.size import horizontal_words, vertical_words
from planner.measurement import Figure, Measurements
from planner.optics.vector import VECTOR, deviation_of
from planner.precision.limits import difference_limits_pd
from planner.precision.steady import steady
from planner.precision.strength import sign_strength
from planner.records.examination import Correction, Gaze, Range
from planner.thresholds import same
from planner.values.statement import Finding, Strength

FEWEST_GAZES = 3
TILTS = (Gaze.TILT_RIGHT, Gaze.TILT_LEFT)
FURTHER = "Measure all nine gazes at distance."
AGAIN = "Measure these gazes again, further out."


def find(measurements: Measurements, correction: Correction) -> Iterator[Finding]:
    """The gaze of the greatest deviation, where three gazes were measured; and the verticals of right and left gaze."""
    yield from _greatest(measurements, correction)
    yield from _vertical_in_side_gaze(measurements, correction)


def _greatest(measurements: Measurements, correction: Correction) -> Iterator[Finding]:
    sizes: dict[Gaze, float] = {}
    figures: dict[Gaze, tuple[Figure, Figure | None]] = {}
    for gaze in Gaze:
        horizontal = measurements.horizontal(gaze, Range.DISTANCE, correction)
        if horizontal is None or gaze in TILTS:
            continue
        vertical = measurements.vertical(gaze, Range.DISTANCE, correction)
        sizes[gaze] = deviation_of(horizontal.value_pd, vertical.value_pd if vertical else 0.0).size_pd
        figures[gaze] = (horizontal, vertical)
    if len(sizes) < FEWEST_GAZES or Gaze.PRIMARY not in sizes:
        return
    greatest_pd = max(sizes.values())
    where = [gaze for gaze, size_pd in sizes.items() if same(size_pd, greatest_pd)]
    larger_pd = steady(greatest_pd - sizes[Gaze.PRIMARY], 1)
    if len(where) > 1 or where == [Gaze.PRIMARY]:
        text = f"No single gaze has a greater deviation than the others: {pd(greatest_pd)} at most."
        strength = Strength.BORDERLINE
    else:
        (gaze,) = where
        horizontal, vertical = figures[gaze]
        straight, _ = figures[Gaze.PRIMARY]
        text = (
            f"The deviation is greatest {gaze.words}: {_words(horizontal, vertical)}, {pd(larger_pd)} more than ahead."
        )
        strength = sign_strength(larger_pd, difference_limits_pd(straight.limits, horizontal.limits))
    yield Finding(
        code="greatest_deviation",
        text=text,
        provenance=VECTOR,
        facts={
            "gaze": where[0].value if len(where) == 1 else "",
            "size_pd": greatest_pd,
            "more_than_primary_pd": larger_pd,
        },
        strength=strength,
        settle="" if strength is Strength.CLEAR else FURTHER,
    )


def _words(horizontal: Figure, vertical: Figure | None) -> str:
    words = inside(horizontal_words(horizontal.value_pd))
    return words if vertical is None else f"{words}, {inside(vertical_words(vertical.value_pd))}"


def _vertical_in_side_gaze(measurements: Measurements, correction: Correction) -> Iterator[Finding]:
    right = measurements.vertical(Gaze.RIGHT, Range.DISTANCE, correction)
    left = measurements.vertical(Gaze.LEFT, Range.DISTANCE, correction)
    if right is None or left is None:
        return
    difference_pd = steady(abs(right.value_pd - left.value_pd), 1)
    limits_pd = difference_limits_pd(right.limits, left.limits)
    strength = sign_strength(difference_pd, limits_pd)
    verdict = "differs" if strength is Strength.CLEAR else "differs, within measurement error,"
    same_words = f"The vertical deviation is the same in right and in left gaze ({pd(limits_pd)} is measurement error)."
    yield Finding(
        code="vertical_comitance",
        text=same_words
        if same(difference_pd, 0)
        else f"The vertical deviation {verdict} by {pd(difference_pd)} between right and left gaze "
        f"({pd(limits_pd)} or more is beyond measurement error).",
        provenance=right.limits.provenance,
        facts={"difference_pd": difference_pd, "limits_pd": limits_pd},
        strength=strength,
        settle="" if strength is Strength.CLEAR else AGAIN,
    )
