"""What is packed for, as it is asked for."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner import kit, setup
from planner.codec import read
from planner.desk.fields import Fields
from planner.limits import Length
from planner.records.practice import Practice
from planner.values.kit import Packing, TeamDay


@dataclass(frozen=True, kw_only=True)
class PackingFor:
    """Days of teams, with the ``needs`` that their lists were answered with."""

    days: Annotated[tuple[TeamDay, ...], Length(0, 60)]
    practice: Practice | None = None


def packing_of(fields: Fields) -> Packing:
    """The packing list."""
    asked = read(PackingFor, fields)
    if asked.practice:
        setup.check_practice(asked.practice)
    return kit.packing(asked.days, asked.practice)
