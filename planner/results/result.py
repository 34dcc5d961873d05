"""One operation and what was seen of it afterwards."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.limits import IsoDate, Length, Within
from planner.records.examination import Constancy
from planner.records.plan import RecordId

Deviation = Annotated[float, Within(-150, 150, "prism dioptres, eso +, exo -")]
Days = Annotated[int, Within(0, 20000, "days after the operation")]


@dataclass(frozen=True, kw_only=True)
class Seen:
    """A follow-up: the horizontal deviation at both ranges, and what is known beside it; null is not said."""

    days_after: Days
    distance_pd: Deviation
    near_pd: Deviation | None = None
    constancy: Constancy | None = None
    stereo_octaves_lost: Annotated[float, Within(0, 12, "octaves of near stereoacuity")] | None = None
    stereo_lost_to_nil: bool | None = None


@dataclass(frozen=True, kw_only=True)
class Result:
    """``before_pd`` and ``expected_pd`` are the deviation before and the one the plan expected; ``seen`` is in order.

    ``constancy`` is that of before the operation. ``reoperated_days`` is null where nobody operated again.
    """

    id: RecordId
    operated_on: Annotated[str, IsoDate()]
    surgeon: Annotated[str, Length(1, 120)]
    family: Annotated[str, Length(1, 80)]
    table: Annotated[str, Length(1, 80)]
    diagnosis: Annotated[str, Length(1, 120)]
    before_pd: Deviation
    expected_pd: Deviation
    constancy: Constancy | None = None
    seen: Annotated[tuple[Seen, ...], Length(0, 60)] = ()
    reoperated_days: Days | None = None
