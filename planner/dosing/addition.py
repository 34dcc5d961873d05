"""What the engine adds to the table's figure of a muscle."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from planner.dosing.recipe import Move
from planner.values.statement import Statement


@dataclass(frozen=True, kw_only=True)
class Addition:
    """``mm`` more, and why."""

    mm: float
    reason: Statement


Additions = Mapping[Move, Addition]
NONE: Additions = MappingProxyType({})
