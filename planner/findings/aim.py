"""Which reading of the primary position the plan answers, why, and what speaks against it."""

from __future__ import annotations

from collections.abc import Iterator

from planner.figures import pd
from planner.measurement import Figure, Measurements
from planner.precision.limits import difference_limits_pd
from planner.precision.steady import steady
from planner.provenance import Mark, Provenance
from planner.records.case import Aim
from planner.records.examination import Gaze, Range, Reading
from planner.records.technique import Condition
from planner.thresholds import reaches
from planner.values.statement import Level, Notice, Statement

TAKEN = {
    Aim.DISTANCE: (Range.DISTANCE, Condition.PLAIN),
    Aim.AFTER_PATCHING: (Range.DISTANCE, Condition.AFTER_PATCHING),
    Aim.PRISM_ADAPTED: (Range.DISTANCE, Condition.PRISM_ADAPTED),
    Aim.NEAR: (Range.NEAR, Condition.PLAIN),
}
"""Where and how the reading was taken that an aim means."""

MADE_FOR_DISTANCE = Provenance(
    mark=Mark.COMMON_PRACTICE, source="dose tables are made for the primary position at distance"
)
WHY = {
    Aim.DISTANCE: ("the tables are made for it", MADE_FOR_DISTANCE),
    Aim.AFTER_PATCHING: (
        "fusion that hides a part of the deviation has been given a rest",
        Provenance(
            mark=Mark.COMMON_PRACTICE, source="many plan intermittent exotropia for the largest angle after patching"
        ),
    ),
    Aim.PRISM_ADAPTED: (
        "it is what the eyes settle at once prisms take the deviation away",
        Provenance(
            mark=Mark.FROM_MEMORY,
            source=(
                "Prism Adaptation Study, Arch Ophthalmol 1990;108:1248-56, acquired esotropia: "
                "those who responded did best when operated for the prism-adapted angle"
            ),
        ),
    ),
    Aim.NEAR: (
        "the surgeon chose near",
        Provenance(mark=Mark.COMMON_PRACTICE, source="some plan for near where esotropia is larger there"),
    ),
}


def words(aim: Aim) -> str:
    """The aim as it stands in a sentence."""
    at, condition = TAKEN[aim]
    return f"at {at}" if condition is Condition.PLAIN else f"at {at}, {condition}"


def why(aim: Aim, reading: Reading) -> Statement:
    """Why this reading."""
    reason, provenance = WHY[aim]
    return Statement(
        code="aim",
        text=f"The plan answers the deviation {words(aim)}, {reading.correction} correction: {reason}.",
        provenance=provenance,
        facts={"aim": aim.value, "method": reading.method.value},
    )


def notices(measurements: Measurements, aim: Aim, figure: Figure) -> Iterator[Notice]:
    """A caution where near is the aim, and one where the aim differs from distance by more than measurement error."""
    if aim is Aim.DISTANCE:
        return
    if aim is Aim.NEAR:
        yield Notice(
            level=Level.CAUTION,
            code="aim_is_near",
            text="The plan answers the near deviation; the dose tables are made for distance.",
            provenance=MADE_FOR_DISTANCE,
            facts={"near_pd": figure.value_pd},
        )
    distance = measurements.horizontal(Gaze.PRIMARY, Range.DISTANCE, figure.reading.correction)
    if distance is None:
        return
    difference_pd = steady(figure.value_pd - distance.value_pd, 1)
    limits_pd = difference_limits_pd(distance.limits, figure.limits)
    if not reaches(abs(difference_pd), limits_pd):
        return
    side = "more eso (less exo)" if difference_pd > 0 else "less eso (more exo)"
    yield Notice(
        level=Level.CAUTION,
        code="aim_differs_from_distance",
        text=(
            f"The deviation that the plan answers is {pd(difference_pd)} {side} than the one at distance "
            f"({pd(limits_pd)} or more is beyond measurement error)."
        ),
        provenance=distance.limits.provenance,
        facts={"distance_pd": distance.value_pd, "difference_pd": difference_pd, "limits_pd": limits_pd},
    )
