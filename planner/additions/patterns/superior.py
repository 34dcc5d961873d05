"""An A made by overacting superior obliques: they are weakened; with superior rectus recession where both eyes drift.

Published is the combination alone: superior rectus recession with posterior tenectomy took 17 ± 3 Δ from an A with
dissociated vertical deviation, the recession alone 7 ± 2.
"""

from __future__ import annotations

from collections.abc import Iterator

from planner.additions.dissociated.recession import expected_of, wanted_of
from planner.additions.dissociated.telling import drift_pd
from planner.additions.dose import graded, is_reached
from planner.additions.limits import beyond
from planner.additions.obliques.superior import OVERACTION, no_published_dose, weakened
from planner.additions.part import Part
from planner.additions.patterns.letter import Letter, not_published
from planner.additions.sources import DISSOCIATED, NO_DOSE
from planner.anatomy import Eye
from planner.figures import pd
from planner.findings.pattern import Shape
from planner.precision.steady import steady
from planner.prediction import SPREADS
from planner.situation import Situation
from planner.thresholds import exceeds
from planner.values.option import Answers, Expected, Family, Unit
from planner.values.statement import Statement

TOGETHER = SPREADS["a-sr-and-so"]


def parts(situation: Situation, found: Letter) -> Iterator[Part]:
    """The overacting superior obliques; with both superior recti where both eyes drift."""
    if not found.opens_down:
        return
    eyes = found.overacting
    name = "both" if len(eyes) > 1 else eyes[0].value
    yield Part(
        id=f"pattern-weaken-so-{name}",
        family=Family.OBLIQUES,
        answers=Answers.PATTERN,
        table=NO_DOSE,
        title="Weaken both superior obliques for the pattern"
        if len(eyes) > 1
        else f"Weaken the {name} superior oblique for the pattern",
        doses=tuple(weakened(eye) for eye in eyes),
        expected=(not_published(found, OVERACTION),),
        notices=tuple(no_published_dose(eye, "a superior oblique weakening") for eye in eyes),
    )
    if len(eyes) > 1 and all(exceeds(drift_pd(situation, eye), 0) for eye in Eye):
        yield _with_recti(situation, found)


def _with_recti(situation: Situation, found: Letter) -> Part:
    id_ = "pattern-recess-both-sr-weaken-both-so"
    wanted = tuple(wanted_of(situation, id_, eye) for eye in Eye)
    reached = all(is_reached(each) for each in wanted)
    recessed = tuple(graded(situation, each) for each in wanted) if reached else ()
    return Part(
        id=id_,
        family=Family.DISSOCIATED,
        answers=Answers.PATTERN,
        table=DISSOCIATED,
        title="Recess both superior recti and weaken both superior obliques",
        doses=(*recessed, *(weakened(eye) for eye in Eye)) if reached else (),
        expected=(_expected(found), *(expected_of(situation, dose) for dose in recessed)),
        notices=tuple(no_published_dose(eye, "a superior oblique weakening") for eye in Eye)
        if reached
        else tuple(beyond(each) for each in wanted if not is_reached(each)),
    )


def _expected(found: Letter) -> Expected:
    if found.shape is not Shape.A:
        return not_published(found, TOGETHER.provenance)
    residual = steady(found.size_pd - TOGETHER.mean, 1)
    return Expected(
        answers=Answers.PATTERN,
        unit=Unit.PRISM_DIOPTRES,
        before=found.pattern_pd,
        correction=-TOGETHER.mean,
        residual=0.0 - residual,
        spread=TOGETHER.sd,
        statement=Statement(
            code="pattern_expected",
            text=f"{found.name}: {pd(TOGETHER.mean)} less in the series, standard deviation {pd(TOGETHER.sd)}.",
            provenance=TOGETHER.provenance,
            facts={"mean_pd": TOGETHER.mean, "sd_pd": TOGETHER.sd},
        ),
    )
