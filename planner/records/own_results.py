"""The operations beside whose table dose a surgeon wants to see what the surgeon's own results say."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.limits import Length, Unique


@dataclass(frozen=True, kw_only=True)
class SwitchedOn:
    """A family of operations (an option without its side) dosed by one table."""

    family: Annotated[str, Length(1, 80)]
    table: Annotated[str, Length(1, 80)]


@dataclass(frozen=True, kw_only=True)
class OwnResults:
    """Body of an ``own_results`` record, schema 1. It is the surgeon's own; what is not named in it is off."""

    schema: int = 1
    surgeon_name: Annotated[str, Length(1, 120)]
    switched_on: Annotated[tuple[SwitchedOn, ...], Length(0, 100), Unique(("family", "table"))] = ()
