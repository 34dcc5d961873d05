"""95 % limits of agreement: how far a second, masked examiner's reading may lie from the first.

Prism and alternate cover test: Holmes et al. 2009, by size (10 to 20 Δ with 20 included; above 20 Δ) and range.
Light-reflex methods: no limits were found in print, only the share of patients within 10 Δ of the prism and
alternate cover test. If errors are normal around zero, that share fixes their spread: SD = 10 / z((1 + share) / 2).
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from math import sqrt

from planner.precision.steady import steady
from planner.precision.strength import TOLERANCE_PD, TWO_SIDED_95
from planner.provenance import Mark, Provenance
from planner.records.examination import Range
from planner.records.technique import Method
from planner.values.statement import Statement

HOLMES = Provenance(
    mark=Mark.PUBLISHED,
    source=(
        "Holmes et al. (PEDIG), Arch Ophthalmol 2009;127:59-65: "
        "prism and alternate cover test, 143 children with esotropia"
    ),
)
LIGHT_REFLEX = Provenance(
    mark=Mark.COMPUTED,
    source=(
        "from the share within 10 Δ of the prism and alternate cover test (PMID 34851974, the lower of esotropia and "
        "exotropia; prism reflex 80.0 % near and 70.0 % distance, photographed light reflex 58.8 % and 54.5 %), "
        "taking errors as normal around zero"
    ),
)
HOUSE = Provenance(mark=Mark.HOUSE_RULE, source="used where the published study is silent")

SMALL_PD = 10.0
LARGE_PD = 20.0


class Direction(StrEnum):
    """Which part of a deviation a figure is about."""

    HORIZONTAL = "horizontal"
    VERTICAL = "vertical"


@dataclass(frozen=True, kw_only=True)
class Limits:
    """Error of one reading and of a difference of two such readings, in prism dioptres, never negative.

    ``sd_pd`` is ``half_width_pd`` / 1.96: it takes the error as normal and without bias.
    ``assumptions`` say where the figure is used beyond the patients it was published for.
    """

    half_width_pd: float
    difference_pd: float
    sd_pd: float
    provenance: Provenance
    assumptions: tuple[Statement, ...]


LARGE_ANGLE = {Range.DISTANCE: (7.3, 10.4), Range.NEAR: (8.3, 11.7)}
SMALL_ANGLE = {Range.DISTANCE: (4.1, 5.8), Range.NEAR: (3.3, 4.7)}
REFLEX_SD_PD = {
    (Method.KRIMSKY, Range.NEAR): 7.80,
    (Method.KRIMSKY, Range.DISTANCE): 9.65,
    (Method.HIRSCHBERG, Range.NEAR): 12.19,
    (Method.HIRSCHBERG, Range.DISTANCE): 13.39,
}


def limits_of(
    deviation_pd: float,
    at: Range,
    *,
    method: Method = Method.PRISM_COVER,
    direction: Direction = Direction.HORIZONTAL,
) -> Limits:
    """The limits of a reading of ``deviation_pd`` (signed: eso +, right hyper +) taken at a range by a method."""
    if method is not Method.PRISM_COVER:
        return _reflex_limits(method, at, direction)
    half_width_pd, difference_pd = (LARGE_ANGLE if is_large(deviation_pd) else SMALL_ANGLE)[at]
    return Limits(
        half_width_pd=half_width_pd,
        difference_pd=difference_pd,
        sd_pd=steady(half_width_pd / TWO_SIDED_95, 3),
        provenance=HOLMES,
        assumptions=tuple(_assumptions(deviation_pd, direction)),
    )


def is_large(deviation_pd: float) -> bool:
    """Whether a deviation belongs to the published band above 20 Δ; exactly 20 Δ belongs to the band of 10 to 20 Δ."""
    return abs(deviation_pd) > LARGE_PD + TOLERANCE_PD


def difference_limits_pd(one: Limits, other: Limits) -> float:
    """95 % limits of the difference of two readings: published for a like pair, else the root of the squares' sum."""
    if abs(one.half_width_pd - other.half_width_pd) < TOLERANCE_PD:
        return one.difference_pd
    return steady(sqrt(one.half_width_pd**2 + other.half_width_pd**2), 1)


def _reflex_limits(method: Method, at: Range, direction: Direction) -> Limits:
    sd_pd = REFLEX_SD_PD[method, at]
    return Limits(
        half_width_pd=steady(TWO_SIDED_95 * sd_pd, 1),
        difference_pd=steady(TWO_SIDED_95 * sd_pd * sqrt(2), 1),
        sd_pd=sd_pd,
        provenance=LIGHT_REFLEX,
        assumptions=(VERTICAL_ASSUMED,) if direction is Direction.VERTICAL else (),
    )


def _assumptions(deviation_pd: float, direction: Direction) -> list[Statement]:
    assumptions = []
    if abs(deviation_pd) < SMALL_PD - TOLERANCE_PD:
        assumptions.append(SMALL_ASSUMED)
    if direction is Direction.VERTICAL:
        assumptions.append(VERTICAL_ASSUMED)
    elif deviation_pd < 0:
        assumptions.append(EXO_ASSUMED)
    return assumptions


SMALL_ASSUMED = Statement(
    code="limits_below_10_assumed",
    text="No limits are published below 10 Δ; those of 10 to 20 Δ are used.",
    provenance=HOUSE,
    facts={"from_pd": SMALL_PD},
)
EXO_ASSUMED = Statement(
    code="limits_exo_assumed",
    text="The limits were found in children with esotropia; they are used for exodeviations too.",
    provenance=HOUSE,
    facts={},
)
VERTICAL_ASSUMED = Statement(
    code="limits_vertical_assumed",
    text="The limits were found in horizontal deviations; they are used for vertical ones too.",
    provenance=HOUSE,
    facts={},
)
