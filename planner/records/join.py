"""Two patients' records that are of one person: entered twice, on two devices or under two names."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.limits import Prose
from planner.records.plan import RecordId


@dataclass(frozen=True, kw_only=True)
class Join:
    """Body of a ``join`` record, schema 1: from now on both are shown as one person, under ``patient_a``.

    ``patient_a`` and ``patient_b`` are the ids of the first versions of their patient records. Nothing is moved or
    merged: every record keeps its patient, and a retraction of the join parts them again.
    """

    schema: int = 1
    patient_a: RecordId
    patient_b: RecordId
    reason: Annotated[str, Prose(3, 400)]
