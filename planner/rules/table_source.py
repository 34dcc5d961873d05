"""A table that nobody has compared with print is said to be so on every option that rests on it."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.provenance import Mark
from planner.situation import Situation
from planner.values.statement import Level, Notice


def notices(situation: Situation, _draft: Draft) -> Iterator[Notice]:
    """A caution where the table was written down from memory."""
    if situation.table.provenance.mark is Mark.FROM_MEMORY:
        name = situation.table.stamp.name
        yield Notice(
            code="table_from_memory",
            text=f"The figures of {name} were written down from memory: verify them against a printed table.",
            provenance=situation.table.provenance,
            facts={},
            level=Level.CAUTION,
        )
