"""The residual deviation as a normal distribution."""

from __future__ import annotations

from dataclasses import dataclass
from math import erfc, sqrt

from planner.precision.limits import Limits
from planner.precision.steady import steady
from planner.precision.strength import TWO_SIDED_95
from planner.provenance import Mark, Provenance
from planner.values.statement import Statement

SUCCESS_PD = 10.0
CLOSED_FORM = Provenance(
    mark=Mark.COMPUTED, source="variances of measurement and dose-response add; both normal, unbiased, independent"
)
SUCCESS = Provenance(mark=Mark.COMMON_PRACTICE, source="success is usually counted within 10 Δ")


@dataclass(frozen=True, kw_only=True)
class Expectation:
    """What a prediction is made from, prism dioptres.

    ``reading_pd`` (eso +, right hyper +) with its ``limits``; ``correction_pd`` is what the operation is expected to
    remove, with the deviation's sign; ``spread_pd`` is the standard deviation of that effect, None where none is known.
    """

    reading_pd: float
    limits: Limits
    correction_pd: float
    spread_pd: float | None


@dataclass(frozen=True, kw_only=True)
class Prediction:
    """The expected residual: mean and 95 % interval in Δ to 0.1, chances in per cent to 0.1; the three add to 100.

    Undercorrected: what remains exceeds ``within_pd`` in the direction of the reading; overcorrected: in the other.
    """

    mean_pd: float
    sd_pd: float
    low_pd: float
    high_pd: float
    within_pd: float
    within_percent: float
    undercorrected_percent: float
    overcorrected_percent: float
    steps: tuple[Statement, ...]


def predict(expectation: Expectation, within_pd: float = SUCCESS_PD) -> Prediction:
    """The residual after an operation, and how likely it is within ``within_pd`` of straight."""
    mean = expectation.reading_pd - expectation.correction_pd
    sd = sqrt(expectation.limits.sd_pd**2 + (expectation.spread_pd or 0.0) ** 2)
    eso = _percent_above((within_pd - mean) / sd)
    exo = _percent_above((within_pd + mean) / sd)
    under, over = (eso, exo) if expectation.reading_pd >= 0 else (exo, eso)
    mean_pd, sd_pd = steady(mean, 1), steady(sd, 1)
    low_pd, high_pd = steady(mean - TWO_SIDED_95 * sd, 1), steady(mean + TWO_SIDED_95 * sd, 1)
    within = steady(100 - under - over, 1)
    return Prediction(
        mean_pd=mean_pd,
        sd_pd=sd_pd,
        low_pd=low_pd,
        high_pd=high_pd,
        within_pd=within_pd,
        within_percent=within,
        undercorrected_percent=under,
        overcorrected_percent=over,
        steps=(
            *_sources(expectation),
            Statement(
                code="residual_expected",
                text=f"Expected {mean_pd:g} Δ, in 95 of 100 between {low_pd:g} and {high_pd:g} Δ.",
                provenance=CLOSED_FORM,
                facts={"mean_pd": mean_pd, "sd_pd": sd_pd, "low_pd": low_pd, "high_pd": high_pd},
            ),
            Statement(
                code="residual_chances",
                text=f"Within {within_pd:g} Δ: {within:g} %; undercorrected {under:g} %, overcorrected {over:g} %.",
                provenance=SUCCESS,
                facts={"within_percent": within, "undercorrected_percent": under, "overcorrected_percent": over},
            ),
        ),
    )


def _percent_above(z: float) -> float:
    """The chance in per cent, to 0.1, that a standard normal value exceeds ``z``: 50 erfc(z / sqrt 2)."""
    return steady(50 * erfc(z / sqrt(2)), 1)


def _sources(expectation: Expectation) -> list[Statement]:
    limits = expectation.limits
    steps = [
        Statement(
            code="measurement_error",
            text=f"Reading +-{limits.half_width_pd:g} Δ (95 %), so SD {limits.sd_pd:.1f} Δ.",
            provenance=limits.provenance,
            facts={"half_width_pd": limits.half_width_pd, "sd_pd": limits.sd_pd},
        ),
        *limits.assumptions,
    ]
    if expectation.spread_pd is None:
        steps.append(
            Statement(
                code="spread_unknown",
                text="No spread of this operation is published: the interval holds measurement error only, too narrow.",
                provenance=CLOSED_FORM,
                facts={},
            )
        )
    else:
        spread_pd = steady(expectation.spread_pd, 1)
        steps.append(
            Statement(
                code="dose_response_spread",
                text=f"Effect of the operation: SD {spread_pd:g} Δ.",
                provenance=CLOSED_FORM,
                facts={"sd_pd": spread_pd},
            )
        )
    return steps
