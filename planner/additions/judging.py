"""A part made into an option: the safety rules that look at muscles and eyes, and what the part leaves alone."""

from __future__ import annotations

from collections.abc import Iterator

from planner import rules
from planner.additions.part import Part
from planner.dosing.draft import Draft, Reach
from planner.dosing.recipe import Move, Recipe
from planner.findings.size import horizontal_words
from planner.rules.small_angle import SUCCESS, SUCCESS_PD
from planner.situation import Situation
from planner.tables import Form
from planner.thresholds import exceeds, same
from planner.values.option import Dose, Family, Option
from planner.values.statement import Level, Notice

HORIZONTAL_NOT_ANSWERED = "horizontal_not_answered"


def judged(situation: Situation, part: Part) -> Option:
    """The option with everything that must be said about it, stops first."""
    residual_pd = round(situation.target.horizontal_pd, 1) + 0.0
    said = [
        *part.notices,
        *rules.of_muscles(situation, as_draft(situation, part.family, part.doses)),
        *_horizontal(situation),
    ]
    return Option(
        id=part.id,
        family=part.family,
        title=part.title,
        doses=part.doses,
        expected_correction_pd=0.0,
        expected_residual_pd=residual_pd,
        reasons_for=part.reasons_for if part.doses else (),
        reasons_against=part.reasons_against if part.doses else (),
        notices=rules.in_order(said),
        table=part.table,
        answers=part.answers,
        expected=part.expected,
    )


def as_draft(situation: Situation, family: Family, doses: tuple[Dose, ...]) -> Draft:
    """Doses as the rules about muscles and eyes read it: no column doses it and it corrects nothing horizontal."""
    moves = [Move(eye=dose.eye, muscle=dose.muscle, operation=dose.operation, form=Form.ONE) for dose in doses]
    return Draft(
        recipe=Recipe(id="", family=family, title="", moves=tuple(moves)),
        reach=Reach.WITHIN,
        row_pd=0.0,
        columns=(),
        doses=doses,
        effects=(),
        correction_pd=0.0,
        residual_pd=round(situation.target.horizontal_pd, 1) + 0.0,
    )


def _horizontal(situation: Situation) -> Iterator[Notice]:
    horizontal_pd = situation.target.horizontal_pd
    if not same(horizontal_pd, 0):
        yield Notice(
            code=HORIZONTAL_NOT_ANSWERED,
            text=f"{horizontal_words(horizontal_pd)} is not answered by this operation alone.",
            provenance=SUCCESS,
            facts={"horizontal_pd": horizontal_pd, "limit_pd": SUCCESS_PD},
            level=Level.CAUTION if exceeds(situation.size_pd, SUCCESS_PD) else Level.NOTE,
        )
