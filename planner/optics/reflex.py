"""Estimates from the corneal light reflex, where the eyes cannot be covered. Both are less exact than prism and cover.

``Hirschberg``: the deviating eye's reflex lies off the centre of the pupil; 22 Δ for each millimetre. The factor
differs between people from 14 to 24 Δ/mm and cannot be told for one of them, so the estimate is a range.
``Krimsky``: the prism before the fixing eye that centres the other eye's reflex; its label is the estimate.
"""

from __future__ import annotations

from dataclasses import dataclass

from planner.errors import Fault, Refused
from planner.optics.technique import LARGEST_LABEL_PD
from planner.precision.limits import limits_of
from planner.precision.steady import steady
from planner.provenance import Mark, Provenance
from planner.records.examination import Range
from planner.records.technique import Method
from planner.values.statement import Statement

PD_PER_MM = 22.0
PD_PER_MM_LOW = 14.0
PD_PER_MM_HIGH = 24.0
LARGEST_MM = 5.0
HIRSCHBERG = Provenance(
    mark=Mark.PUBLISHED,
    source=(
        "22 Δ/mm: studies as quoted by a Pacific University thesis (its own 30 eyes: mean 23); 43 adults 12.81 +- 1.22 "
        "deg/mm, Invest Ophthalmol Vis Sci 2010;51:4035-9; range 14-24 Δ/mm, Binocul Vis Strabismus Q 2006;21:45-6"
    ),
)
REFLEX_ERRORS = Provenance(
    mark=Mark.PUBLISHED,
    source=(
        "Choi & Kushner, Ophthalmology 1998;105:1301-6: 16 experienced examiners; by light reflex each was at least "
        "10 Δ too low at least once, by prism reflex most were 10 Δ too high at least once"
    ),
)


@dataclass(frozen=True, kw_only=True)
class ReflexEstimate:
    """An estimate with its 95 % range, prism dioptres, eso + or right hyper +."""

    method: Method
    value_pd: float
    low_pd: float
    high_pd: float
    steps: tuple[Statement, ...]


def hirschberg(displacement_mm: float, at: Range = Range.NEAR) -> ReflexEstimate:
    """From the reflex's displacement in the deviating eye, at most 5 mm: temporal (eso) +, for right hyper +."""
    if abs(displacement_mm) > LARGEST_MM:
        raise Refused(
            Fault(
                code="out_of_range",
                text="The reflex cannot lie that far from the centre of the pupil",
                field="displacement_mm",
                value=f"{displacement_mm:g}",
                allowed=f"-{LARGEST_MM:g} to {LARGEST_MM:g} mm",
            )
        )
    value_pd = steady(PD_PER_MM * displacement_mm, 1)
    step = Statement(
        code="light_reflex",
        text=f"{abs(displacement_mm):g} mm at {PD_PER_MM:g} Δ/mm: about {abs(value_pd):g} Δ.",
        provenance=HIRSCHBERG,
        facts={
            "displacement_mm": displacement_mm,
            "pd_per_mm": PD_PER_MM,
            "pd_per_mm_low": PD_PER_MM_LOW,
            "pd_per_mm_high": PD_PER_MM_HIGH,
        },
    )
    return _estimate(Method.HIRSCHBERG, value_pd, at, step)


def krimsky(prism_pd: float, at: Range = Range.NEAR) -> ReflexEstimate:
    """From the label of the one prism that centres the reflex, signed like the deviation; 100 Δ at most."""
    if abs(prism_pd) > LARGEST_LABEL_PD:
        raise Refused(
            Fault(
                code="out_of_range",
                text="There is no such prism",
                field="prism_pd",
                value=f"{prism_pd:g}",
                allowed=f"-{LARGEST_LABEL_PD:g} to {LARGEST_LABEL_PD:g} Δ",
            )
        )
    step = Statement(
        code="prism_reflex",
        text=f"A prism of {abs(prism_pd):g} Δ centres the reflex.",
        provenance=Provenance(mark=Mark.FROM_MEMORY, source="prism reflex test as taught"),
        facts={"prism_pd": prism_pd},
    )
    return _estimate(Method.KRIMSKY, prism_pd, at, step)


def _estimate(method: Method, value_pd: float, at: Range, step: Statement) -> ReflexEstimate:
    limits = limits_of(value_pd, at, method=method)
    return ReflexEstimate(
        method=method,
        value_pd=value_pd,
        low_pd=steady(value_pd - limits.half_width_pd, 1),
        high_pd=steady(value_pd + limits.half_width_pd, 1),
        steps=(step, roughness(method, value_pd, at)),
    )


def roughness(method: Method, value_pd: float, at: Range) -> Statement:
    """The warning that goes with every estimate by ``method``."""
    half_width_pd = limits_of(value_pd, at, method=method).half_width_pd
    return Statement(
        code="reflex_is_rough",
        text=(
            f"An estimate by {method.words} is rough (+-{half_width_pd:g} Δ) and holds the angle between the "
            "optical and the visual axis too: do not plan from it where prism and cover is possible."
        ),
        provenance=REFLEX_ERRORS,
        facts={"half_width_pd": half_width_pd},
    )
