"""The poorer or the better seeing eye."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.options.reasons.reason import Reason, common_practice, speaks_against, speaks_for
from planner.situation import Situation

SPARE_THE_BETTER = common_practice("where one eye sees less, surgery is kept to it if it can be")


def reasons(situation: Situation, draft: Draft) -> Iterator[Reason]:
    """For an option on the poorer eye alone, against one that includes the better eye."""
    poorer = situation.poorer_eye
    if poorer is None:
        return
    if draft.recipe.eyes == {poorer}:
        text = f"Only the {poorer} eye, which sees less, is operated."
        yield speaks_for("poorer_eye", text, SPARE_THE_BETTER, eye=poorer.value)
    else:
        text = f"The {poorer.other} eye, which sees better, is operated."
        yield speaks_against("better_eye", text, SPARE_THE_BETTER, eye=poorer.other.value)
