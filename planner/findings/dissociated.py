"""Dissociated vertical deviation, told from a true hyper: the covered eye drifts up, whichever eye is covered."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Eye
from planner.figures import pd
from planner.precision.limits import Direction, difference_limits_pd, limits_of
from planner.precision.strength import sign_strength
from planner.provenance import Mark, Provenance
from planner.records.examination import Examination, Range
from planner.thresholds import same
from planner.values.statement import Finding, Strength

DRIFT = Provenance(
    mark=Mark.FROM_MEMORY,
    source="as taught: the drift of each eye is measured while the other fixes; alternate cover adds it to a hyper",
)
REVERSE = (
    "Measure the vertical deviation with either eye fixing: a true hyper turns its sign, a dissociated one does not."
)
OTHER_EYE = "Measure the drift of the other eye too."


def find(examination: Examination) -> Iterator[Finding]:
    """One sentence for both eyes; none where no drift was found."""
    drifts = {Eye.RIGHT: examination.dvd_right_pd, Eye.LEFT: examination.dvd_left_pd}
    found = {eye: drift_pd for eye, drift_pd in drifts.items() if drift_pd}
    if not found:
        return
    each = ", ".join(f"{eye} eye {pd(drift_pd)}" for eye, drift_pd in found.items())
    right_pd, left_pd = examination.dvd_right_pd, examination.dvd_left_pd
    facts: dict[str, str | float] = {
        f"dvd_{eye}_pd": drift_pd for eye, drift_pd in drifts.items() if drift_pd is not None
    }
    if right_pd is None or left_pd is None:
        unequal, strength, settle = "", Strength.BORDERLINE, f"{OTHER_EYE} {REVERSE}"
    else:
        unequal, facts = _unequal(right_pd, left_pd, facts)
        strength, settle = Strength.CLEAR, REVERSE
    yield Finding(
        code="dissociated_vertical",
        text=f"Dissociated vertical deviation: {each}{unequal}. It is no hyper of one eye against the other.",
        provenance=DRIFT,
        facts=facts,
        strength=strength,
        settle=settle,
    )


def _unequal(right_pd: float, left_pd: float, facts: dict[str, str | float]) -> tuple[str, dict[str, str | float]]:
    one, other = (limits_of(drift_pd, Range.DISTANCE, direction=Direction.VERTICAL) for drift_pd in (right_pd, left_pd))
    limits_pd = difference_limits_pd(one, other)
    difference_pd = abs(right_pd - left_pd)
    facts = {**facts, "difference_pd": difference_pd, "limits_pd": limits_pd}
    if same(difference_pd, 0):
        return ", alike", facts
    beyond = sign_strength(difference_pd, limits_pd) is Strength.CLEAR
    return (", unequal beyond measurement error" if beyond else ", unequal within measurement error"), facts
