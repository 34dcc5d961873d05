"""A palsy or restriction for which standard doses are not made: the principle that holds instead, as a notice."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Muscle
from planner.dosing.draft import Draft
from planner.principles import principles
from planner.records.diagnosis import Diagnosis
from planner.situation import Situation
from planner.values.option import Answers, Family, Operation
from planner.values.principle import Principle
from planner.values.statement import Level, Notice

HORIZONTAL = frozenset((Muscle.MR, Muscle.LR))


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """What stops or warns, never what only informs: that stands with the principles."""
    answers = _answers(draft)
    for each in principles(situation.examination):
        if answers in each.concerns and each.level is not Level.NOTE:
            yield _notice(each, _level(each, draft))


def _answers(draft: Draft) -> Answers | None:
    """The standard doses that an option rests on: tables of horizontal recti, or slopes of vertical ones."""
    if any(dose.muscle in HORIZONTAL and dose.mm is not None for dose in draft.doses):
        return Answers.HORIZONTAL
    if draft.recipe.family in (Family.VERTICAL_RECTI, Family.OBLIQUES):
        return Answers.VERTICAL
    return None


def _level(principle: Principle, draft: Draft) -> Level:
    """In thyroid eye disease a recession of inferior recti has a slope of its own, so that it is only cautioned."""
    own_figure = principle.topic == Diagnosis.THYROID_EYE_DISEASE and all(
        (dose.muscle, dose.operation) == (Muscle.IR, Operation.RECESS) for dose in draft.doses
    )
    return Level.CAUTION if own_figure else principle.level


def _notice(principle: Principle, level: Level) -> Notice:
    return Notice(
        code=principle.code, text=principle.text, provenance=principle.provenance, facts=principle.facts, level=level
    )
