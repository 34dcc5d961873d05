"""The letter that the horizontal deviations of up-gaze, primary position and down-gaze draw.

With deviations eso +: a V has more eso (less exo) in down-gaze than in up-gaze, an A less. A Y is a V that opens above
the primary position only, a lambda an A that opens below it only, an X opens to both sides of it.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.figures import pd
from planner.measurement import Measurements
from planner.precision.limits import difference_limits_pd
from planner.precision.steady import steady
from planner.precision.strength import threshold_strength
from planner.provenance import Mark, Provenance
from planner.records.examination import Correction, Gaze, Range
from planner.thresholds import reaches
from planner.values.statement import Finding, Strength

A_FROM_PD = 10.0
V_FROM_PD = 15.0
FLAT_SHARE = 0.25
"""A half that changes by this share of the other half, or less, counts as level."""

THRESHOLDS = Provenance(
    mark=Mark.PUBLISHED, source="PMC4330283: A from 10 Δ, V from 15 Δ between up-gaze and down-gaze"
)
HALVES = Provenance(
    mark=Mark.HOUSE_RULE,
    source=(
        "the letters Y, X and lambda are defined by halves without figures; here the thresholds of A (10 Δ) and V "
        "(15 Δ), PMC4330283, are asked of the half that opens, and the level half changes by a quarter of it at most"
    ),
)
NOT_MEASURED = Provenance(mark=Mark.MEASURED, source="up-gaze and down-gaze are not both in this examination")
AGAIN = "Measure up- and down-gaze again at distance, the head bent back and forward as far each time."
MISSING = "Measure the horizontal deviation in up- and down-gaze at distance."


class Shape(StrEnum):
    """The letter that the deviations draw."""

    A = "A"
    V = "V"
    Y = "Y"
    X = "X"
    LAMBDA = "lambda"
    NONE = "none"
    UNKNOWN = "unknown"

    @property
    def is_pattern(self) -> bool:
        """Whether a pattern was found."""
        return self not in (Shape.NONE, Shape.UNKNOWN)


@dataclass(frozen=True, kw_only=True)
class Pattern:
    """``down_minus_up_pd`` is the horizontal deviation (eso +) in down-gaze minus that in up-gaze, None if unknown.

    ``opens_up_pd`` and ``opens_down_pd`` say how much more exo (less eso) there is in up- and in down-gaze than
    straight ahead; None where that was not measured.
    """

    shape: Shape
    down_minus_up_pd: float | None
    opens_up_pd: float | None = None
    opens_down_pd: float | None = None
    statement: Finding

    @property
    def size_pd(self) -> float:
        """The change that makes the pattern, without sign; 0 if unknown."""
        opens_up_pd, opens_down_pd = self.opens_up_pd or 0.0, self.opens_down_pd or 0.0
        match self.shape:
            case Shape.X:
                return max(opens_up_pd, opens_down_pd)
            case Shape.Y:
                return opens_up_pd
            case Shape.LAMBDA:
                return opens_down_pd
        return abs(self.down_minus_up_pd or 0.0)


def find(measurements: Measurements, correction: Correction) -> Pattern:
    """The pattern at distance, from readings with one correction."""
    gazes = (Gaze.UP, Gaze.PRIMARY, Gaze.DOWN)
    up, ahead, down = (measurements.horizontal(gaze, Range.DISTANCE, correction) for gaze in gazes)
    if up is None or down is None:
        text = "Up-gaze and down-gaze were not both measured: an A or V pattern cannot be told."
        statement = Finding(
            code="pattern_not_measured",
            text=text,
            provenance=NOT_MEASURED,
            facts={},
            strength=Strength.CANNOT_TELL,
            settle=MISSING,
        )
        return Pattern(shape=Shape.UNKNOWN, down_minus_up_pd=None, statement=statement)
    difference_pd = steady(down.value_pd - up.value_pd, 1)
    opens_up_pd = steady(ahead.value_pd - up.value_pd, 1) if ahead else None
    opens_down_pd = steady(ahead.value_pd - down.value_pd, 1) if ahead else None
    shape = _shape(difference_pd, opens_up_pd, opens_down_pd)
    limits_pd = difference_limits_pd(up.limits, down.limits)
    strength = _strength(shape, difference_pd, opens_up_pd, opens_down_pd, limits_pd)
    facts: dict[str, str | float] = {
        "up_pd": up.value_pd,
        "down_pd": down.value_pd,
        "down_minus_up_pd": difference_pd,
        "limits_pd": limits_pd,
        "shape": shape.value,
    }
    if ahead is not None:
        facts["primary_pd"] = ahead.value_pd
    return Pattern(
        shape=shape,
        down_minus_up_pd=difference_pd,
        opens_up_pd=opens_up_pd,
        opens_down_pd=opens_down_pd,
        statement=Finding(
            code="pattern",
            text=_words(shape, difference_pd, opens_up_pd, opens_down_pd),
            provenance=HALVES if shape in (Shape.Y, Shape.X, Shape.LAMBDA) else THRESHOLDS,
            facts=facts,
            strength=strength,
            settle="" if strength is Strength.CLEAR else AGAIN,
        ),
    )


def _shape(down_minus_up_pd: float, opens_up_pd: float | None, opens_down_pd: float | None) -> Shape:
    if opens_up_pd is not None and opens_down_pd is not None:
        if reaches(opens_up_pd, A_FROM_PD) and reaches(opens_down_pd, A_FROM_PD):
            return Shape.X
        if reaches(opens_up_pd, V_FROM_PD) and reaches(FLAT_SHARE * opens_up_pd, abs(opens_down_pd)):
            return Shape.Y
        if reaches(opens_down_pd, A_FROM_PD) and reaches(FLAT_SHARE * opens_down_pd, abs(opens_up_pd)):
            return Shape.LAMBDA
    if reaches(down_minus_up_pd, V_FROM_PD):
        return Shape.V
    return Shape.A if reaches(-down_minus_up_pd, A_FROM_PD) else Shape.NONE


def _strength(
    shape: Shape, down_minus_up_pd: float, opens_up_pd: float | None, opens_down_pd: float | None, limits_pd: float
) -> Strength:
    """How surely the figure that decides lies on its side of its threshold."""
    if shape is Shape.X:
        return threshold_strength(min(opens_up_pd or 0.0, opens_down_pd or 0.0), A_FROM_PD, limits_pd)
    if shape is Shape.Y:
        return threshold_strength(opens_up_pd or 0.0, V_FROM_PD, limits_pd)
    if shape is Shape.LAMBDA:
        return threshold_strength(opens_down_pd or 0.0, A_FROM_PD, limits_pd)
    threshold_pd = V_FROM_PD if down_minus_up_pd > 0 else A_FROM_PD
    return threshold_strength(abs(down_minus_up_pd), threshold_pd, limits_pd)


def _words(shape: Shape, down_minus_up_pd: float, opens_up_pd: float | None, opens_down_pd: float | None) -> str:
    if shape is Shape.X:
        up, down = pd(opens_up_pd or 0.0), pd(opens_down_pd or 0.0)
        return f"X pattern: more exo (less eso) than straight ahead in up-gaze ({up}) and in down-gaze ({down})."
    if shape is Shape.Y:
        return f"Y pattern: {pd(opens_up_pd or 0.0)} more exo (less eso) in up-gaze, down-gaze as straight ahead."
    if shape is Shape.LAMBDA:
        opens = pd(opens_down_pd or 0.0)
        return f"Lambda pattern: {opens} more exo (less eso) in down-gaze, up-gaze as straight ahead."
    more = f"{pd(down_minus_up_pd)} more eso (less exo) in {'down' if down_minus_up_pd > 0 else 'up'}-gaze"
    if shape is Shape.NONE:
        return f"No significant A or V pattern: {more}." if down_minus_up_pd else "No A or V pattern."
    return f"{shape} pattern: {more}."
