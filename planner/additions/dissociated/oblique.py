"""Anterior transposition of overacting inferior obliques, where a dissociated deviation goes with them."""

from __future__ import annotations

from collections.abc import Iterator

from planner.additions.dissociated.telling import drift_pd
from planner.additions.dose import without_figure
from planner.additions.overaction import overacts
from planner.additions.part import Part
from planner.additions.sources import NO_DOSE
from planner.anatomy import Eye, Muscle
from planner.figures import pd
from planner.options.reasons.reason import common_practice
from planner.situation import Situation
from planner.thresholds import exceeds
from planner.values.option import Answers, Expected, Family, Operation, Unit
from planner.values.statement import Level, Notice, Statement

WITH_OVERACTION = common_practice("inferior obliques that overact beside a dissociated deviation are brought forward")
LEVEL = "level with the insertion of the inferior rectus"


def parts(situation: Situation) -> Iterator[Part]:
    """Both eyes, where both drift and both inferior obliques overact."""
    if not all(exceeds(drift_pd(situation, eye), 0) and overacts(situation, eye, Muscle.IO) for eye in Eye):
        return
    yield Part(
        id="dvd-anteriorise-both-io",
        family=Family.DISSOCIATED,
        answers=Answers.DISSOCIATED,
        table=NO_DOSE,
        title="Bring both inferior obliques forward for the dissociated deviation",
        doses=tuple(without_figure(eye, Muscle.IO, Operation.ANTERIORISE, _why(), words=LEVEL) for eye in Eye),
        expected=tuple(_expected(situation, eye) for eye in Eye),
        notices=(
            Notice(
                code="no_published_effect-dissociated",
                text="No figure is published here for what this takes from a dissociated drift.",
                provenance=WITH_OVERACTION,
                facts={},
                level=Level.CAUTION,
            ),
        ),
    )


def _why() -> Statement:
    text = "Both inferior obliques overact and both eyes drift up."
    return Statement(code="overaction", text=text, provenance=WITH_OVERACTION, facts={})


def _expected(situation: Situation, eye: Eye) -> Expected:
    drift = drift_pd(situation, eye)
    return Expected(
        answers=Answers.DISSOCIATED,
        unit=Unit.PRISM_DIOPTRES,
        before=drift,
        correction=None,
        residual=None,
        spread=None,
        statement=Statement(
            code=f"drift_not_predicted-{eye}",
            text=f"The {eye} eye's drift of {pd(drift)}: how much less it will be is not published.",
            provenance=WITH_OVERACTION,
            facts={"drift_pd": drift, "eye": eye.value},
        ),
        eye=eye,
    )
