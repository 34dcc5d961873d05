"""All options of a situation: recipes, doses, what must be said, what speaks for and against, and their order."""

from __future__ import annotations

from planner import rules
from planner.dosing.draft import Draft, draft
from planner.options import (
    augmentation,
    both_eyes,
    four_muscles,
    one_eye,
    one_muscle,
    overcorrection,
    series,
    three_muscles,
)
from planner.options.order import in_order
from planner.options.reasons import reasons
from planner.outlook import Outlook, outlook
from planner.situation import Situation
from planner.thresholds import same
from planner.values.option import Option

FAMILIES = (both_eyes, one_eye, one_muscle, series, three_muscles, four_muscles)


def offer(situation: Situation) -> tuple[Option, ...]:
    """The options, best first, with the surgeon's changes.

    None where there is no horizontal deviation.
    """
    overcorrection.check(situation)
    families = () if same(situation.target.horizontal_pd, 0) else FAMILIES
    drafts = [
        draft(situation, recipe, augmentation.additions(situation, recipe))
        for family in families
        for recipe in family.recipes(situation)
    ]
    expected = outlook(situation)
    return in_order([_option(situation, each, expected) for each in drafts], situation.intended_pd)


def _option(situation: Situation, drafted: Draft, expected: Outlook) -> Option:
    said = reasons(situation, drafted)
    return Option(
        id=drafted.recipe.id,
        family=drafted.recipe.family,
        title=drafted.recipe.title,
        doses=drafted.doses,
        expected_correction_pd=drafted.correction_pd,
        expected_residual_pd=drafted.residual_pd,
        reasons_for=tuple(reason.statement for reason in said if reason.speaks_for),
        reasons_against=tuple(reason.statement for reason in said if not reason.speaks_for),
        notices=rules.notices(situation, drafted),
        table=drafted.recipe.series.stamp if drafted.recipe.series else None,
        prediction=expected.of(drafted.doses, drafted.residual_pd),
    )
