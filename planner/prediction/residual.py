"""The residual deviation as a normal distribution."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import erfc, sqrt

from planner.direction import Direction, direction_of
from planner.precision.limits import Limits
from planner.precision.steady import steady
from planner.precision.strength import TWO_SIDED_95
from planner.provenance import Mark, Provenance
from planner.values.prediction import Residual
from planner.values.statement import Statement

SUCCESS_PD = 10.0
SQRT_2 = sqrt(2)
CLOSED_FORM = Provenance(
    mark=Mark.COMPUTED, source="variances of measurement and dose-response add; both normal, unbiased, independent"
)
SUCCESS = Provenance(mark=Mark.COMMON_PRACTICE, source="success is usually counted within 10 Δ")


@dataclass(frozen=True, kw_only=True)
class Expectation:
    """What a prediction is made from, prism dioptres.

    ``reading_pd`` (eso +, right hyper +) with its ``limits``; ``correction_pd`` is what the operation is expected to
    remove, with the deviation's sign; ``spread_pd`` is the standard deviation of that effect, None where none is known.
    ``operated_for`` is the direction whose excess counts as undercorrection, None for that of the reading.
    """

    reading_pd: float
    limits: Limits
    correction_pd: float
    spread_pd: float | None
    operated_for: Direction | None = None


def predict(expectation: Expectation, within_pd: float = SUCCESS_PD) -> Residual:
    """The residual after an operation, and how likely it is within ``within_pd`` of straight."""
    mean = expectation.reading_pd - expectation.correction_pd
    sd = sqrt(expectation.limits.sd_pd**2 + (expectation.spread_pd or 0.0) ** 2)
    eso = _percent_above((within_pd - mean) / sd)
    exo = _percent_above((within_pd + mean) / sd)
    operated_for = expectation.operated_for or direction_of(expectation.reading_pd)
    under, over = (eso, exo) if operated_for is Direction.ESO else (exo, eso)
    return Residual(
        mean_pd=steady(mean, 1),
        sd_pd=steady(sd, 1),
        low_pd=steady(mean - TWO_SIDED_95 * sd, 1),
        high_pd=steady(mean + TWO_SIDED_95 * sd, 1),
        within_pd=within_pd,
        within_percent=steady(100 - under - over, 1),
        undercorrected_percent=under,
        overcorrected_percent=over,
    )


def measurement_error(limits: Limits) -> Iterator[Statement]:
    """The error of a reading, and where its limits are used beyond the patients they were published for."""
    yield Statement(
        code="measurement_error",
        text=f"Reading +-{limits.half_width_pd:g} Δ (95 %), so SD {limits.sd_pd:.1f} Δ.",
        provenance=limits.provenance,
        facts={"half_width_pd": limits.half_width_pd, "sd_pd": limits.sd_pd},
    )
    yield from limits.assumptions


def dose_response(spread_pd: float | None) -> Statement:
    """The scatter of the effect, or that none is known."""
    if spread_pd is None:
        return Statement(
            code="spread_unknown",
            text="No spread of this operation is published: the interval holds measurement error only, too narrow.",
            provenance=CLOSED_FORM,
            facts={},
        )
    sd_pd = steady(spread_pd, 1)
    return Statement(
        code="dose_response_spread",
        text=f"Effect of the operation: SD {sd_pd:g} Δ.",
        provenance=CLOSED_FORM,
        facts={"sd_pd": sd_pd},
    )


def result(residual: Residual) -> Iterator[Statement]:
    """The interval and the chances in words."""
    yield Statement(
        code="residual_expected",
        text=f"Expected {residual.mean_pd:g} Δ, in 95 of 100 between {residual.low_pd:g} and {residual.high_pd:g} Δ.",
        provenance=CLOSED_FORM,
        facts={
            "mean_pd": residual.mean_pd,
            "sd_pd": residual.sd_pd,
            "low_pd": residual.low_pd,
            "high_pd": residual.high_pd,
        },
    )
    within, under = residual.within_percent, residual.undercorrected_percent
    over = residual.overcorrected_percent
    yield Statement(
        code="residual_chances",
        text=f"Within {residual.within_pd:g} Δ: {within:g} %; undercorrected {under:g} %, overcorrected {over:g} %.",
        provenance=SUCCESS,
        facts={"within_percent": within, "undercorrected_percent": under, "overcorrected_percent": over},
    )


def _percent_above(z: float) -> float:
    """The chance in per cent, to 0.1, that a standard normal value exceeds ``z``: 50 erfc(z / sqrt 2)."""
    return steady(50 * erfc(z / SQRT_2), 1)
