"""Which source doses came from, as it is printed beside them."""

from __future__ import annotations

from dataclasses import dataclass

from planner.provenance import Provenance


@dataclass(frozen=True, kw_only=True)
class TableStamp:
    """A dose table, or the series of one operation, that doses were taken from.

    ``caution`` repeats the source's own words of warning, ``validity`` for which patients it is meant.
    ``clinics_own``: it did not come with the engine.
    """

    id: str
    name: str
    provenance: Provenance
    caution: str
    validity: str = ""
    clinics_own: bool = False
