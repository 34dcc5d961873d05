"""The deviation that the options answer."""

from __future__ import annotations

from planner.errors import Fault, Refused
from planner.findings import aim as aims
from planner.measurement import Figure, Measurements
from planner.precision.limits import Limits
from planner.provenance import Mark, Provenance
from planner.records.case import Aim
from planner.records.examination import Correction, Gaze, Range
from planner.records.technique import Condition
from planner.thresholds import same
from planner.values.proposal import Target
from planner.values.statement import Level, Notice, Statement

FIELD = "examination.readings"
BOTH_LENSES = Provenance(mark=Mark.HOUSE_RULE, source="the rule for spectacles takes the mean of both lenses")
NOT_MEASURED = Provenance(mark=Mark.MEASURED, source="the primary position has a vertical figure alone")


def target(measurements: Measurements, aim: Aim = Aim.DISTANCE) -> Target:
    """The deviation of the primary position, measured as ``aim`` says, with correction where it was.

    :class:`Refused` with ``no_primary_distance`` where the primary position was not measured at distance,
    ``aim_not_measured`` where it was not measured as ``aim`` says, ``no_horizontal_deviation`` where the examination
    holds no deviation to answer. A deviation of another kind alone gives a target without a horizontal part.
    """
    if not any(_is_measured(measurements, Range.DISTANCE, each, Condition.PLAIN) for each in Correction):
        raise Refused(
            Fault(
                code="no_primary_distance",
                text="The primary position at distance was not measured yet; the plan starts from that reading.",
                field=FIELD,
                allowed="a reading of the primary position at distance",
            )
        )
    at, condition = aims.TAKEN[aim]
    measured = [each for each in Correction if _is_measured(measurements, at, each, condition)]
    if not measured:
        raise Refused(
            Fault(
                code="aim_not_measured",
                text=f"The plan is to answer the deviation {aims.words(aim)}, which was not measured.",
                field="aim",
                value=aim.value,
                allowed=f"a reading of the primary position {aims.words(aim)}",
            )
        )
    for correction in measured:
        horizontal = measurements.horizontal(Gaze.PRIMARY, at, correction, condition)
        if horizontal is not None:
            vertical = measurements.vertical(Gaze.PRIMARY, at, correction, condition)
            return _of_horizontal(measurements, aim, horizontal, vertical)
    vertical = measurements.vertical(Gaze.PRIMARY, at, measured[0], condition)
    if vertical is None or same(vertical.value_pd, 0):
        raise Refused(_nothing_to_answer("has no horizontal figure yet, and the options need one"))
    return _of_vertical(aim, vertical)


def _is_measured(measurements: Measurements, at: Range, correction: Correction, condition: Condition) -> bool:
    found = (measurements.horizontal, measurements.vertical)
    return any(direction(Gaze.PRIMARY, at, correction, condition) is not None for direction in found)


def _of_horizontal(measurements: Measurements, aim: Aim, horizontal: Figure, vertical: Figure | None) -> Target:
    if same(horizontal.value_pd, 0) and not _anything_else(measurements, horizontal.reading.correction):
        raise Refused(_nothing_to_answer("shows no horizontal deviation, so there is none to operate for"))
    return Target(
        horizontal_pd=horizontal.value_pd,
        raw_pd=horizontal.raw_pd,
        vertical_pd=vertical.value_pd if vertical else None,
        reading=horizontal.reading,
        aim=aim,
        steps=(aims.why(aim, horizontal.reading), *horizontal.steps, *_error(horizontal.limits)),
        limits_pd=horizontal.limits.half_width_pd,
        agreement=horizontal.agreement,
        notices=(*horizontal.notices, *aims.notices(measurements, aim, horizontal), *_one_lens(measurements)),
    )


def _of_vertical(aim: Aim, vertical: Figure) -> Target:
    text = "The primary position has no horizontal figure yet: no horizontal operation can be offered."
    missing = Notice(level=Level.CAUTION, code="horizontal_not_measured", text=text, provenance=NOT_MEASURED, facts={})
    return Target(
        horizontal_pd=0.0,
        raw_pd=0.0,
        vertical_pd=vertical.value_pd,
        reading=vertical.reading,
        aim=aim,
        steps=(aims.why(aim, vertical.reading), *vertical.steps, *_error(vertical.limits)),
        limits_pd=vertical.limits.half_width_pd,
        agreement=vertical.agreement,
        notices=(missing, *vertical.notices),
    )


def _anything_else(measurements: Measurements, correction: Correction) -> bool:
    """Whether the patient has a deviation of another kind, or elsewhere, with the same correction."""
    examination = measurements.examination
    others = (
        examination.dvd_right_pd,
        examination.dvd_left_pd,
        examination.excyclotorsion_right_deg,
        examination.excyclotorsion_left_deg,
        examination.excyclotorsion_down_deg,
    )
    figures = [*measurements.horizontals.values(), *measurements.verticals.values()]
    with_it = [figure.value_pd for figure in figures if figure.reading.correction is correction]
    return any(value is not None and not same(value, 0) for value in (*others, *with_it))


def _error(limits: Limits) -> tuple[Statement, ...]:
    width_pd = limits.half_width_pd
    said = Statement(
        code="limits_of_agreement",
        text=(
            f"The 95 % limits of agreement of one such reading are +-{width_pd:g} Δ, "
            f"of the difference of two +-{limits.difference_pd:g} Δ."
        ),
        provenance=limits.provenance,
        facts={"limits_pd": width_pd, "difference_limits_pd": limits.difference_pd},
    )
    return (said, *limits.assumptions)


def _one_lens(measurements: Measurements) -> tuple[Notice, ...]:
    examination = measurements.examination
    if (examination.spectacles_right_d is None) is (examination.spectacles_left_d is None):
        return ()
    text = "The power of one spectacle lens is not known: no reading was corrected for spectacles."
    return (Notice(level=Level.NOTE, code="one_lens_not_known", text=text, provenance=BOTH_LENSES, facts={}),)


def _nothing_to_answer(why: str) -> Fault:
    return Fault(
        code="no_horizontal_deviation",
        text=f"The primary position at distance {why}.",
        field=FIELD,
        allowed="an eso or exo figure above zero in the primary position at distance",
    )
