"""AC/A: prism dioptres of accommodative convergence for each dioptre of accommodation.

    heterophoria   pupil distance in cm + (near - distance) / accommodation at near
    gradient       (with lens - without lens) / change of accommodation; a minus lens asks for accommodation

Both are stimulus ratios. Deviations are eso +. The two methods measure different things and need not agree.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.errors import Fault, Refused
from planner.precision.limits import difference_limits_pd, limits_of
from planner.precision.steady import steady
from planner.precision.strength import TOLERANCE_PD, threshold_strength
from planner.provenance import Mark, Provenance
from planner.records.examination import Range
from planner.values.statement import Statement, Strength

NORMAL_LOW = 3.0
NORMAL_HIGH = 5.0
NORMAL = Provenance(
    mark=Mark.PUBLISHED,
    source="normal 3 to 5; by gradient on average 3.7 (0.9 to 9.8), high above 5",
)
FORMULA = Provenance(
    mark=Mark.COMPUTED, source="the definition of the ratio and the limits of agreement of its readings"
)
MM_PER_CM = 10.0


class AcaClass(StrEnum):
    """An AC/A ratio against the published normal range of 3 to 5."""

    LOW = "low"
    NORMAL = "normal"
    HIGH = "high"


@dataclass(frozen=True, kw_only=True)
class AcaRatio:
    """The ratio to 0.1, Δ for each dioptre, with the 95 % limits that its readings' error gives it.

    ``strength`` is borderline where those limits, one-sided, cross an end of the normal range.
    """

    ratio: float
    limits: float
    aca_class: AcaClass
    strength: Strength
    statement: Statement


def heterophoria_aca(
    *, distance_pd: float, near_pd: float, pupil_distance_mm: float, near_accommodation_d: float = 3.0
) -> AcaRatio:
    """AC/A from the deviations at distance and near, eso +; near accommodation is 3 D at 33 cm."""
    _within("pupil_distance_mm", pupil_distance_mm, 40, 80)
    _within("near_accommodation_d", near_accommodation_d, 1, 10)
    distance, near = limits_of(distance_pd, Range.DISTANCE), limits_of(near_pd, Range.NEAR)
    ratio = pupil_distance_mm / MM_PER_CM + (near_pd - distance_pd) / near_accommodation_d
    return _classified("heterophoria", ratio, difference_limits_pd(distance, near) / near_accommodation_d)


def gradient_aca(*, without_lens_pd: float, with_lens_pd: float, lens_d: float, at: Range) -> AcaRatio:
    """AC/A from one range without and with a lens before both eyes, eso +; ``lens_d`` is the lens, minus or plus."""
    if not lens_d:
        raise Refused(
            Fault(
                code="no_lens", text="Without a lens there is no gradient", field="lens_d", value="0", allowed="not 0"
            )
        )
    _within("lens_d", lens_d, -6, 6)
    without, with_lens = limits_of(without_lens_pd, at), limits_of(with_lens_pd, at)
    ratio = (without_lens_pd - with_lens_pd) / lens_d
    return _classified("gradient", ratio, difference_limits_pd(without, with_lens) / abs(lens_d))


def _classified(method: str, exact: float, exact_limits: float) -> AcaRatio:
    ratio, limits = steady(exact, 1), steady(exact_limits, 1)
    if exact > NORMAL_HIGH + TOLERANCE_PD:
        aca_class = AcaClass.HIGH
    elif exact < NORMAL_LOW - TOLERANCE_PD:
        aca_class = AcaClass.LOW
    else:
        aca_class = AcaClass.NORMAL
    nearest_end = min((NORMAL_LOW, NORMAL_HIGH), key=lambda end: abs(exact - end))
    return AcaRatio(
        ratio=ratio,
        limits=limits,
        aca_class=aca_class,
        strength=threshold_strength(exact, nearest_end, exact_limits),
        statement=Statement(
            code=f"aca_{method}",
            text=f"AC/A by {method} {ratio:g} +-{limits:g} Δ/D: {aca_class.value} (normal 3 to 5).",
            provenance=NORMAL,
            facts={"ratio": ratio, "limits": limits, "class": aca_class.value, "computed_by": FORMULA.source},
        ),
    )


def _within(field: str, value: float, low: float, high: float) -> None:
    if not low <= value <= high:
        raise Refused(
            Fault(
                code="out_of_range",
                text=f"{value:g} is outside the allowed range",
                field=field,
                value=f"{value:g}",
                allowed=f"{low:g} to {high:g}",
            )
        )
