"""How far the dose stands on a table made for the operation."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.options.reasons.reason import Reason, speaks_against
from planner.provenance import Mark, Provenance
from planner.situation import Situation
from planner.values.option import Family

DOUBLING = Provenance(
    mark=Mark.COMMON_PRACTICE,
    source="the doubling rule; 3.5 Δ remained at 6 months after single LR resection (PMID 17419083, n = 35)",
)
TWO_MUSCLE_TABLE = Provenance(
    mark=Mark.COMMON_PRACTICE,
    source="three and four muscles are judged from the tables for two, half a row for each muscle",
)

ONE_SERIES = Provenance(mark=Mark.HOUSE_RULE, source="a table used by many weighs more than one series")


def reasons(_situation: Situation, draft: Draft) -> Iterator[Reason]:
    """Against a single series, and against one, three and four muscles by a table that is made for two."""
    family = draft.recipe.family
    if draft.recipe.series:
        text = "The dose rests on one series, not on a table in common use."
        yield speaks_against("one_series", text, ONE_SERIES)
    elif family is Family.ONE_MUSCLE:
        text = "The table is made for two muscles; one alone is dosed by the doubling rule."
        yield speaks_against("doubling_rule", text, DOUBLING)
    elif family in (Family.THREE_MUSCLES, Family.FOUR_MUSCLES):
        text = f"The table is made for two muscles; the dose of {family} is derived from it."
        yield speaks_against("derived_dose", text, TWO_MUSCLE_TABLE)
