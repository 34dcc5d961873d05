"""The eye that the patient prefers to fix with."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Eye
from planner.dosing.draft import Draft
from planner.options.reasons.reason import Reason, common_practice, speaks_against, speaks_for
from planner.records.examination import FixingEye
from planner.situation import Situation

PREFERENCE = common_practice("one-eye surgery is usually done on the eye that does not fix")


def reasons(situation: Situation, draft: Draft) -> Iterator[Reason]:
    """For an option on the other eye alone, against one on the fixing eye alone."""
    fixing = situation.examination.fixing_eye
    if fixing not in (FixingEye.RIGHT, FixingEye.LEFT) or len(draft.recipe.eyes) > 1:
        return
    preferred = Eye(fixing.value)
    (operated,) = draft.recipe.eyes
    if operated is preferred:
        text = f"The {operated} eye is the one the patient prefers to fix with."
        yield speaks_against("fixing_eye", text, PREFERENCE, eye=operated.value)
    else:
        text = f"The patient prefers to fix with the {preferred} eye, which is not touched."
        yield speaks_for("fixing_eye_spared", text, PREFERENCE, eye=preferred.value)
