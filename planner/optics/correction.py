"""From a raw reading to the corrected value, one step after the other, each with its source."""

from __future__ import annotations

from dataclasses import dataclass
from math import copysign, fsum

from planner.errors import Fault, Refused
from planner.optics.degrees import angle_of, pd_of
from planner.optics.near import NEAR_MODEL, deviation_pd
from planner.optics.prism import CALIBRATION, LABELLED_FOR, RAY_MODEL, turned_pd
from planner.optics.spectacles import RULE, SIGNIFICANT_D, true_pd
from planner.optics.technique import Technique, labels_of
from planner.precision.steady import steady
from planner.provenance import Mark, Provenance
from planner.records.technique import Arrangement
from planner.values.statement import Level, Notice, Statement

LARGEST_PD = 150.0
EXACT_SUM = Provenance(mark=Mark.COMPUTED, source="angles add: (p + q) / (1 - p q / 10,000)")
STACKING = Provenance(mark=Mark.COMMON_PRACTICE, source="two prisms in one direction are not stacked before one eye")


@dataclass(frozen=True, kw_only=True)
class Corrected:
    """A raw reading and what it means, prism dioptres with the raw reading's sign, the corrected one to 0.1 Δ.

    ``steps`` tell how one became the other, in order; there are none where nothing had to be corrected. ``notices``
    holds a caution where prisms were stacked, for then a small tilt changes much.
    """

    raw_pd: float
    corrected_pd: float
    steps: tuple[Statement, ...]
    notices: tuple[Notice, ...]


def correct(raw_pd: float, technique: Technique) -> Corrected:
    """The corrected value of one direction of a reading (eso +, right hyper +).

    Refused with ``second_prism``, ``out_of_range``, ``total_internal_reflection``, ``beyond_right_angle`` or, where the
    result exceeds 150 Δ, ``beyond_measurable``.
    """
    labels_pd = labels_of(raw_pd, technique)
    steps: list[Statement] = []
    if technique.arrangement is Arrangement.STACKED:
        each_pd = [_through(labels_pd, technique, steps)]
    else:
        each_pd = [_through((label_pd,), technique, steps) for label_pd in labels_pd]
    each_pd = [_at_near(value_pd, technique, steps) for value_pd in each_pd]
    value_pd = _both_eyes(each_pd, steps)
    value_pd = _without_spectacles(value_pd, technique.spectacles_d, steps)
    return _corrected(raw_pd, value_pd, steps, _notices(technique))


def behind_spectacles(raw_pd: float, lens_d: float) -> Corrected:
    """The corrected value of a reading whose prisms were as labelled, through lenses of ``lens_d`` dioptres.

    Refused with ``beyond_measurable`` where the result exceeds 150 Δ.
    """
    steps: list[Statement] = []
    return _corrected(raw_pd, _without_spectacles(abs(raw_pd), lens_d, steps), steps, ())


def _corrected(raw_pd: float, value_pd: float, steps: list[Statement], notices: tuple[Notice, ...]) -> Corrected:
    if value_pd > LARGEST_PD:
        raise Refused(
            Fault(
                code="beyond_measurable",
                text=f"Corrected, this reading would be {value_pd:.0f} Δ",
                field="raw_pd",
                value=f"{raw_pd:g}",
                allowed=f"readings that come to at most {LARGEST_PD:g} Δ",
            )
        )
    corrected_pd = steady(copysign(value_pd, raw_pd), 1) if steps else raw_pd
    return Corrected(raw_pd=raw_pd, corrected_pd=corrected_pd, steps=tuple(steps), notices=notices)


def _through(labels_pd: tuple[float, ...], technique: Technique, steps: list[Statement]) -> float:
    stacked = len(labels_pd) > 1
    if not stacked and technique.held is LABELLED_FOR[technique.material]:
        return labels_pd[0]
    turned = turned_pd(labels_pd, technique.material, technique.held)
    acts_pd = steady(turned, 1)
    prisms = " and ".join(f"{label_pd:g} Δ" for label_pd in labels_pd)
    how = f"{'stacked, ' if stacked else ''}{technique.held.words}"
    steps.append(
        Statement(
            code="prisms_stacked" if stacked else "prism_held",
            text=(
                f"{prisms} of {technique.material.value}, {how}, {'act' if stacked else 'acts'} as {acts_pd:g} Δ "
                f"({technique.material.value} is labelled for: {LABELLED_FOR[technique.material].words})."
            ),
            provenance=RAY_MODEL,
            facts={"labels_pd": fsum(labels_pd), "acts_pd": acts_pd, "calibration": CALIBRATION.source},
        )
    )
    return turned


def _at_near(value_pd: float, technique: Technique, steps: list[Statement]) -> float:
    held_mm = technique.prism_from_cornea_mm
    if held_mm is None:
        return value_pd
    deviation = deviation_pd(value_pd, held_mm, technique.target_from_cornea_mm)
    prism_pd, eye_pd = steady(value_pd, 1), steady(deviation, 1)
    steps.append(
        Statement(
            code="prism_away_at_near",
            text=(
                f"Held {held_mm:g} mm from the cornea, target at {technique.target_from_cornea_mm:g} mm: "
                f"{prism_pd:g} Δ neutralises {eye_pd:g} Δ."
            ),
            provenance=NEAR_MODEL,
            facts={
                "prism_pd": prism_pd,
                "eye_pd": eye_pd,
                "prism_from_cornea_mm": held_mm,
                "target_from_cornea_mm": technique.target_from_cornea_mm,
            },
        )
    )
    return deviation


def _both_eyes(each_pd: list[float], steps: list[Statement]) -> float:
    if len(each_pd) == 1:
        return each_pd[0]
    together = pd_of(angle_of(each_pd[0]) + angle_of(each_pd[1]))
    first_pd, second_pd, sum_pd = (steady(value_pd, 1) for value_pd in (*each_pd, together))
    steps.append(
        Statement(
            code="prisms_split",
            text=f"{first_pd:g} Δ before one eye and {second_pd:g} Δ before the other come to {sum_pd:g} Δ.",
            provenance=EXACT_SUM,
            facts={"first_pd": first_pd, "second_pd": second_pd, "sum_pd": sum_pd},
        )
    )
    return together


def _without_spectacles(value_pd: float, lens_d: float | None, steps: list[Statement]) -> float:
    if not lens_d:
        return value_pd
    behind = true_pd(value_pd, lens_d)
    reads_pd, eyes_pd = steady(value_pd, 1), steady(behind, 1)
    weight = "" if abs(lens_d) > SIGNIFICANT_D else f" (up to {SIGNIFICANT_D:g} D the effect is small)"
    steps.append(
        Statement(
            code="through_spectacles",
            text=f"Through {lens_d:+g} D, {eyes_pd:g} Δ reads {reads_pd:g} Δ{weight}.",
            provenance=RULE,
            facts={"lens_d": lens_d, "reads_pd": reads_pd, "true_pd": eyes_pd},
        )
    )
    return behind


def _notices(technique: Technique) -> tuple[Notice, ...]:
    if technique.arrangement is not Arrangement.STACKED:
        return ()
    return (
        Notice(
            level=Level.CAUTION,
            code="stacked_in_one_direction",
            text="Two prisms were stacked in one direction: measure again with one before each eye if you can.",
            provenance=STACKING,
            facts={"second_pd": technique.second_pd},
        ),
    )
