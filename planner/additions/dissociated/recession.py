"""Superior rectus recession for a dissociated deviation: both eyes, each by its own drift, or one."""

from __future__ import annotations

from collections.abc import Iterator

from planner.additions import sources
from planner.additions.dissociated.telling import drift_pd
from planner.additions.dose import Slope, Wanted, graded, is_reached
from planner.additions.limits import beyond
from planner.additions.part import Part
from planner.additions.reading import READING
from planner.anatomy import Eye, Muscle
from planner.dosing.rounding import to_half_mm
from planner.figures import pd
from planner.maxima import DISSOCIATED
from planner.options.reasons.reason import common_practice, speaks_against, speaks_for
from planner.precision.steady import steady
from planner.prediction import SPREADS
from planner.rules.minima import MINIMA_MM
from planner.situation import Situation
from planner.thresholds import exceeds, reaches
from planner.values.option import Answers, Dose, Expected, Family, Operation, Unit
from planner.values.statement import Statement

MEASURED = SPREADS["dvd-sr-recess"]
SLOPE = Slope(pd_per_mm=MEASURED.mean, sd_pd_per_mm=MEASURED.sd, provenance=MEASURED.provenance)
LEAST_MM = MINIMA_MM[Muscle.SR, Operation.RECESS]
OTHER_EYE = common_practice("after one-sided surgery the other eye's drift often shows itself")


def parts(situation: Situation) -> Iterator[Part]:
    """Both eyes where both drift enough for the least useful recession, and each such eye by itself."""
    eyes = [eye for eye in Eye if reaches(to_half_mm(drift_pd(situation, eye) / SLOPE.pd_per_mm), LEAST_MM)]
    if len(eyes) > 1:
        yield _part(situation, tuple(eyes))
    for eye in eyes:
        yield _part(situation, (eye,))


def _part(situation: Situation, eyes: tuple[Eye, ...]) -> Part:
    both = len(eyes) > 1
    id_ = f"dvd-recess-{'both-sr' if both else f'sr-{eyes[0]}'}"
    wanted = tuple(wanted_of(situation, id_, eye) for eye in eyes)
    reached = all(is_reached(each) for each in wanted)
    doses = tuple(graded(situation, each) for each in wanted) if reached else ()
    other = drift_pd(situation, eyes[0].other)
    alone = not both and exceeds(other, 0)
    text = "Both eyes drift; the one that is not operated may drift more afterwards."
    return Part(
        id=id_,
        family=Family.DISSOCIATED,
        answers=Answers.DISSOCIATED,
        table=sources.DISSOCIATED,
        title="Recess both superior recti for the dissociated deviation"
        if both
        else f"Recess the {eyes[0]} superior rectus for the dissociated deviation",
        doses=doses,
        expected=tuple(expected_of(situation, dose) for dose in doses),
        reasons_for=(speaks_for("both_drift", "Both eyes drift, and both are operated.", OTHER_EYE).statement,)
        if both
        else (),
        reasons_against=(speaks_against("other_eye_drifts", text, OTHER_EYE).statement,) if alone else (),
        notices=() if reached else tuple(beyond(each) for each in wanted if not is_reached(each)),
    )


def wanted_of(situation: Situation, id_: str, eye: Eye) -> Wanted:
    """The superior rectus of an eye, to be recessed for the whole of its drift."""
    drift = drift_pd(situation, eye)
    return Wanted(
        option=id_,
        eye=eye,
        muscle=Muscle.SR,
        operation=Operation.RECESS,
        share_pd=drift,
        widest_mm=DISSOCIATED.widest_mm,
        slope=SLOPE,
        reading=Statement(
            code="reading",
            text=f"The {eye} eye drifts up by {pd(drift)} under cover.",
            provenance=READING,
            facts={"drift_pd": drift, "eye": eye.value},
        ),
    )


def expected_of(situation: Situation, dose: Dose) -> Expected:
    """What the recession takes from the drift of its eye."""
    drift = drift_pd(situation, dose.eye)
    correction_pd = steady(SLOPE.pd_per_mm * dose.figure_mm, 1)
    residual_pd = steady(drift - correction_pd, 1)
    spread_pd = steady(MEASURED.sd * dose.figure_mm, 1)
    return Expected(
        answers=Answers.DISSOCIATED,
        unit=Unit.PRISM_DIOPTRES,
        before=drift,
        correction=correction_pd,
        residual=residual_pd,
        spread=spread_pd,
        statement=Statement(
            code=f"drift_expected-{dose.eye}",
            text=(
                f"The {dose.eye} eye's drift of {pd(drift)}: {pd(correction_pd)} less are expected, standard deviation "
                f"{pd(spread_pd)}."
            ),
            provenance=SLOPE.provenance,
            facts={"correction_pd": correction_pd, "spread_pd": spread_pd, "eye": dose.eye.value},
        ),
        eye=dose.eye,
    )
