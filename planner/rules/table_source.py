"""A source that nobody has compared with print, or that did not come with the engine, is named on every dose."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft, source_of
from planner.provenance import Mark
from planner.situation import Situation
from planner.values.statement import Level, Notice


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A caution where the figures were written down from memory, and one where the table is the clinic's own."""
    stamp = source_of(situation, draft.recipe).stamp
    if stamp.provenance.mark is Mark.FROM_MEMORY:
        yield Notice(
            code="table_from_memory",
            text=f"The figures of {stamp.name} were written down from memory: verify them against a printed table.",
            provenance=stamp.provenance,
            facts={},
            level=Level.CAUTION,
        )
    if stamp.clinics_own:
        yield Notice(
            code="clinics_own_table",
            text=f"{stamp.name} is the clinic's own table: its figures are those that the clinic entered.",
            provenance=stamp.provenance,
            facts={"table": stamp.id},
            level=Level.CAUTION,
        )
