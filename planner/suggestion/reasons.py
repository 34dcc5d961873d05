"""Why nothing is suggested for a patient: the own results were learned from others than this one."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.recipe import Recipe
from planner.followup.confounders import PALSY_OR_RESTRICTION, is_operated_before
from planner.provenance import Mark, Provenance
from planner.records.case import Aim
from planner.records.motility import Pull
from planner.situation import Situation
from planner.values.statement import Statement

ALIKE = Provenance(mark=Mark.HOUSE_RULE, source="own results are used only for patients such as they were learned from")


def reasons(situation: Situation, recipe: Recipe) -> Iterator[Statement]:
    """The same that keeps a past case from teaching; nothing where the patient is like those who taught."""
    examination = situation.examination
    if any(each.diagnosis in PALSY_OR_RESTRICTION for each in examination.diagnoses) or any(
        each.result is Pull.RESTRICTED for each in examination.forced_ductions
    ):
        yield _reason("not_with_a_palsy", "your own cases are without palsy or restriction")
    if is_operated_before(examination.previous_operations, {(move.eye, move.muscle) for move in recipe.moves}):
        yield _reason("not_after_earlier_operation", "your own cases had no earlier operation on a horizontal muscle")
    if situation.case.aim is Aim.NEAR:
        yield _reason("not_aimed_at_near", "your own cases were dosed for the deviation at distance")


def _reason(code: str, why: str) -> Statement:
    return Statement(code=code, text=f"Nothing is suggested here: {why}.", provenance=ALIKE, facts={})
