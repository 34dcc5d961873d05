"""Where a figure comes from: a mark and, for a published figure, the source in words."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Mark(StrEnum):
    """How far a figure may be trusted; shown beside it wherever it is shown."""

    PUBLISHED = "published"
    FROM_MEMORY = "from memory, verify"
    COMPUTED = "computed"
    MEASURED = "measured"
    COMMON_PRACTICE = "common practice"
    HOUSE_RULE = "house rule"
    CLINICS_OWN = "this clinic's practice"


@dataclass(frozen=True, kw_only=True)
class Provenance:
    """The mark of a figure and its source.

    ``HOUSE_RULE`` marks a decision of this project (for example how a tie is rounded), never a clinical figure.
    """

    mark: Mark
    source: str
