"""A day's list of one team: who is operated on, in which order and for how long."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.limits import IsoDate, Length, Pattern, Prose, Within
from planner.records.plan import RecordId

ClockTime = Annotated[str, Pattern(r"([01][0-9]|2[0-3]):[0-5][0-9]", "a time of day such as 08:30")]


@dataclass(frozen=True, kw_only=True)
class ListEntry:
    """One operation. ``patient_id`` is the first version of the patient's record; ``plan_id`` is what is to be done."""

    patient_id: RecordId
    plan_id: RecordId
    duration_min: Annotated[int, Within(5, 600, "minutes")]
    note: Annotated[str, Prose(0, 200)] = ""


@dataclass(frozen=True, kw_only=True)
class OperatingList:
    """Body of an ``operating_list`` record, schema 1, in operating order. A patient twice is warned of, not refused."""

    schema: int = 1
    on: Annotated[str, IsoDate(2000)]
    team: Annotated[str, Length(1, 80)]
    place: Annotated[str, Length(0, 120)] = ""
    starts_at: ClockTime = "08:00"
    entries: Annotated[tuple[ListEntry, ...], Length(0, 40)] = ()
