"""Is it a real change? Two readings of the same thing at different times."""

from __future__ import annotations

from dataclasses import dataclass

from planner.precision.limits import HOLMES, difference_limits_pd, is_large, limits_of
from planner.precision.steady import steady
from planner.precision.strength import TOLERANCE_PD, sign_strength
from planner.provenance import Mark, Provenance
from planner.records.examination import Range
from planner.records.technique import Method
from planner.values.statement import Statement, Strength

REAL_CHANGE_LARGE_PD = 12.0
REAL_CHANGE_SMALL_PD = 6.0


@dataclass(frozen=True, kw_only=True)
class RealChange:
    """``difference_pd`` is after minus before (eso +); from ``threshold_pd`` on a change is clear."""

    difference_pd: float
    threshold_pd: float
    strength: Strength
    statement: Statement


def real_change(before_pd: float, after_pd: float, at: Range, *, method: Method = Method.PRISM_COVER) -> RealChange:
    """Whether a deviation really changed: from 12 Δ on above 20 Δ, from 6 Δ on up to 20 Δ (Holmes 2009).

    Where the two readings lie in different bands, the wider one counts, so that a change is not claimed too early.
    For light-reflex methods the threshold is the 95 % limit of a difference. A smaller difference may be real too.
    """
    difference_pd = steady(after_pd - before_pd, 1)
    threshold_pd, provenance = _threshold(before_pd, after_pd, at, method)
    if abs(difference_pd) + TOLERANCE_PD >= threshold_pd:
        strength, verdict = Strength.CLEAR, "likely a real change"
    else:
        strength = sign_strength(difference_pd, threshold_pd)
        verdict = "it may be real or measurement error"
    return RealChange(
        difference_pd=difference_pd,
        threshold_pd=threshold_pd,
        strength=strength,
        statement=Statement(
            code="real_change",
            text=f"Changed by {abs(difference_pd):g} Δ ({threshold_pd:g} Δ or more counts as real): {verdict}.",
            provenance=provenance,
            facts={
                "before_pd": before_pd,
                "after_pd": after_pd,
                "difference_pd": difference_pd,
                "threshold_pd": threshold_pd,
            },
        ),
    )


def _threshold(before_pd: float, after_pd: float, at: Range, method: Method) -> tuple[float, Provenance]:
    if method is Method.PRISM_COVER:
        large = is_large(before_pd) or is_large(after_pd)
        return (REAL_CHANGE_LARGE_PD if large else REAL_CHANGE_SMALL_PD), HOLMES
    before, after = (limits_of(value, at, method=method) for value in (before_pd, after_pd))
    return difference_limits_pd(before, after), Provenance(mark=Mark.COMPUTED, source=before.provenance.source)
