"""Near against distance by the 10 Δ rule.

With deviations eso +, near minus distance tells it for eso and exo alike: +10 Δ or more means more eso (less exo) at
near, -10 Δ or less means less eso (more exo) at near.

Exodeviation, smaller at near (divergence excess by the readings):

    one eye patched for 30 to 60 minutes   near within 10 Δ of distance: simulated; still 10 Δ or more apart: true
    +3.00 at near                          near within 10 Δ of distance: the difference goes with a high AC/A

The patch is read first: what it removes was fusion, not accommodation.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.precision.limits import difference_limits_pd, limits_of
from planner.precision.steady import steady
from planner.precision.strength import TOLERANCE_PD, threshold_strength
from planner.provenance import Mark, Provenance
from planner.records.examination import Range
from planner.values.statement import Statement, Strength

RULE_PD = 10.0
BURIAN = Provenance(mark=Mark.FROM_MEMORY, source="types of exotropia after Burian, 10 Δ rule")
HIGH_ACA = Provenance(
    mark=Mark.PUBLISHED,
    source="PMC6825697: clinical high AC/A where esotropia at near exceeds distance by 10 Δ or more",
)
DISTANCE_ESO = Provenance(mark=Mark.FROM_MEMORY, source="the 10 Δ rule, used for esotropia larger at distance")


class NearDistanceClass(StrEnum):
    """What near and distance say together."""

    BASIC = "basic"
    HIGH_ACA_ESO = "esotropia larger at near, clinical high AC/A"
    DISTANCE_ESO = "esotropia larger at distance"
    DIVERGENCE_EXCESS_UNTESTED = "divergence excess, true or simulated"
    DIVERGENCE_EXCESS = "true divergence excess"
    DIVERGENCE_EXCESS_HIGH_ACA = "divergence excess with high AC/A"
    SIMULATED_DIVERGENCE_EXCESS = "simulated divergence excess"
    CONVERGENCE_INSUFFICIENCY = "convergence insufficiency"


@dataclass(frozen=True, kw_only=True)
class NearTests:
    """Near readings after one eye was patched for 30 to 60 minutes, and through +3.00; eso +, None if not tested."""

    patched_pd: float | None = None
    plus_three_pd: float | None = None


@dataclass(frozen=True, kw_only=True)
class NearDistance:
    """``difference_pd`` is near minus distance; ``limits_pd`` its 95 % limits; ``beyond_error`` if it exceeds them.

    ``strength`` is about the class; ``settle`` says what to measure next, empty where nothing is open.
    """

    difference_pd: float
    limits_pd: float
    beyond_error: bool
    near_distance_class: NearDistanceClass
    strength: Strength
    statement: Statement
    settle: str


NO_TESTS = NearTests()
PATCH_NEXT = "Patch one eye for 30 to 60 minutes and measure near again, before the eyes are used together."
PLUS_NEXT = "Measure near through +3.00."
AGAIN = "Measure distance and near again, with targets that make the patient focus."


def classify(*, distance_pd: float, near_pd: float, tests: NearTests = NO_TESTS) -> NearDistance:
    """The near-distance class of a deviation, from readings with the same correction, eso +.

    A deviation counts as eso or exo by its larger reading.
    """
    difference_pd = steady(near_pd - distance_pd, 1)
    limits_pd = difference_limits_pd(limits_of(distance_pd, Range.DISTANCE), limits_of(near_pd, Range.NEAR))
    found, settle = _class_of(distance_pd, near_pd, tests)
    strength = _strength(found, distance_pd, difference_pd, limits_pd, tests)
    beyond_error = abs(difference_pd) + TOLERANCE_PD >= limits_pd
    return NearDistance(
        difference_pd=difference_pd,
        limits_pd=limits_pd,
        beyond_error=beyond_error,
        near_distance_class=found,
        strength=strength,
        statement=Statement(
            code="near_distance",
            text=f"{_words(difference_pd, beyond_error=beyond_error)}: {found.value}.",
            provenance=_PROVENANCE.get(found, BURIAN),
            facts={
                "distance_pd": distance_pd,
                "near_pd": near_pd,
                "difference_pd": difference_pd,
                "limits_pd": limits_pd,
                "class": found.value,
            },
        ),
        settle=settle or (AGAIN if strength is not Strength.CLEAR else ""),
    )


_PROVENANCE = {NearDistanceClass.HIGH_ACA_ESO: HIGH_ACA, NearDistanceClass.DISTANCE_ESO: DISTANCE_ESO}


def _class_of(distance_pd: float, near_pd: float, tests: NearTests) -> tuple[NearDistanceClass, str]:
    eso = max((distance_pd, near_pd), key=abs) >= 0
    more_at_near = near_pd - distance_pd + TOLERANCE_PD >= RULE_PD
    less_at_near = distance_pd - near_pd + TOLERANCE_PD >= RULE_PD
    if more_at_near:
        return (NearDistanceClass.HIGH_ACA_ESO, "") if eso else _divergence_excess(distance_pd, tests)
    if less_at_near:
        return (NearDistanceClass.DISTANCE_ESO if eso else NearDistanceClass.CONVERGENCE_INSUFFICIENCY), ""
    return NearDistanceClass.BASIC, ""


def _divergence_excess(distance_pd: float, tests: NearTests) -> tuple[NearDistanceClass, str]:
    if tests.patched_pd is None:
        return NearDistanceClass.DIVERGENCE_EXCESS_UNTESTED, PATCH_NEXT
    if _closes_up(tests.patched_pd, distance_pd):
        return NearDistanceClass.SIMULATED_DIVERGENCE_EXCESS, ""
    if tests.plus_three_pd is None:
        return NearDistanceClass.DIVERGENCE_EXCESS, PLUS_NEXT
    if _closes_up(tests.plus_three_pd, distance_pd):
        return NearDistanceClass.DIVERGENCE_EXCESS_HIGH_ACA, ""
    return NearDistanceClass.DIVERGENCE_EXCESS, ""


def _closes_up(near_pd: float, distance_pd: float) -> bool:
    return near_pd - distance_pd + TOLERANCE_PD < RULE_PD


def _strength(
    found: NearDistanceClass, distance_pd: float, difference_pd: float, limits_pd: float, tests: NearTests
) -> Strength:
    if found is NearDistanceClass.DIVERGENCE_EXCESS_UNTESTED:
        return Strength.CANNOT_TELL
    if found is NearDistanceClass.BASIC:
        return threshold_strength(abs(difference_pd), RULE_PD, limits_pd)
    deciding_pd = abs(difference_pd)
    if found is NearDistanceClass.SIMULATED_DIVERGENCE_EXCESS and tests.patched_pd is not None:
        deciding_pd = tests.patched_pd - distance_pd
    elif found is NearDistanceClass.DIVERGENCE_EXCESS and tests.patched_pd is not None:
        deciding_pd = min(difference_pd, tests.patched_pd - distance_pd)
    elif found is NearDistanceClass.DIVERGENCE_EXCESS_HIGH_ACA and tests.plus_three_pd is not None:
        deciding_pd = tests.plus_three_pd - distance_pd
    return threshold_strength(deciding_pd, RULE_PD, limits_pd)


def _words(difference_pd: float, *, beyond_error: bool) -> str:
    error = "beyond measurement error" if beyond_error else "within measurement error"
    if difference_pd == 0:
        return "Near equals distance"
    side = "more eso (less exo)" if difference_pd > 0 else "less eso (more exo)"
    return f"At near {abs(difference_pd):g} Δ {side} than at distance ({error})"
