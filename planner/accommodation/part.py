"""The accommodative part: what the correction takes away of an esotropia, at one range."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.precision.change import real_change
from planner.precision.limits import limits_of
from planner.precision.steady import steady
from planner.precision.strength import TOLERANCE_PD, threshold_strength, weakest
from planner.provenance import Mark, Provenance
from planner.records.examination import Range
from planner.values.statement import Statement, Strength

STRAIGHT_PD = 10.0
RULE = Provenance(
    mark=Mark.FROM_MEMORY,
    source="with the full correction within 10 Δ: fully accommodative; less than without but more than 10 Δ: partly",
)


class PartClass(StrEnum):
    """How much of an esotropia the correction removes."""

    FULLY = "fully accommodative"
    PARTLY = "partly accommodative"
    NOT_SHOWN = "no accommodative part shown"


@dataclass(frozen=True, kw_only=True)
class AccommodativePart:
    """``part_pd`` goes with the correction; ``remaining_pd`` is what an operation may answer. Both eso +."""

    part_pd: float
    remaining_pd: float
    part_class: PartClass
    strength: Strength
    statement: Statement
    settle: str


def accommodative_part(*, without_pd: float, with_pd: float, at: Range) -> AccommodativePart | None:
    """The accommodative part of an esotropia; None where there is no esotropia without correction.

    A part counts as shown when the difference is a real change (Holmes 2009).
    """
    if without_pd <= 0:
        return None
    change = real_change(without_pd, with_pd, at)
    part_pd = steady(without_pd - with_pd, 1)
    if part_pd + TOLERANCE_PD < change.threshold_pd:
        part_class = PartClass.NOT_SHOWN
        strength = Strength.CLEAR if part_pd <= 0 else Strength.BORDERLINE
    else:
        remains = with_pd > STRAIGHT_PD + TOLERANCE_PD
        part_class = PartClass.PARTLY if remains else PartClass.FULLY
        limits_pd = limits_of(with_pd, at).half_width_pd
        strength = weakest(change.strength, threshold_strength(with_pd, STRAIGHT_PD, limits_pd))
    return AccommodativePart(
        part_pd=part_pd,
        remaining_pd=with_pd,
        part_class=part_class,
        strength=strength,
        statement=Statement(
            code="accommodative_part",
            text=(
                f"{without_pd:g} Δ without and {with_pd:g} Δ with correction at {at.value}: {part_class.value} "
                f"({part_pd:g} Δ)."
            ),
            provenance=RULE,
            facts={
                "without_pd": without_pd,
                "with_pd": with_pd,
                "part_pd": part_pd,
                "threshold_pd": change.threshold_pd,
            },
        ),
        settle="" if strength is Strength.CLEAR else "Measure again after weeks in the full cycloplegic correction.",
    )
