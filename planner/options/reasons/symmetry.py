"""Both eyes alike, or only one eye touched."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.options.reasons.reason import Reason, common_practice, speaks_against, speaks_for
from planner.situation import Situation
from planner.values.option import Family

SYMMETRY = common_practice("the same done to both eyes keeps side gazes and lid openings even")
ONE_EYE = common_practice("one eye heals, the other is not put at risk")


def reasons(_situation: Situation, draft: Draft) -> Iterator[Reason]:
    """Symmetry for pairs, a single eye for the rest; one muscle alone makes side gaze uneven."""
    family = draft.recipe.family
    if family in (Family.BOTH_EYES, Family.FOUR_MUSCLES):
        yield speaks_for("symmetric", "The same in both eyes: side gazes and lid openings stay even.", SYMMETRY)
    if len(draft.recipe.eyes) == 1:
        yield speaks_for("one_eye_only", "Only one eye is operated.", ONE_EYE)
    if family is Family.ONE_MUSCLE:
        text = "One muscle alone can leave the deviation uneven in side gaze."
        yield speaks_against("uneven_side_gaze", text, SYMMETRY)
