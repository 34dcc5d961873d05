"""A record taken back: nothing is deleted, a reason is kept."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.limits import Prose
from planner.records.plan import RecordId


@dataclass(frozen=True, kw_only=True)
class Retraction:
    """Body of a ``retraction`` record, schema 1. ``record_id`` is the record that is taken back."""

    schema: int = 1
    record_id: RecordId
    reason: Annotated[str, Prose(3, 400)]
