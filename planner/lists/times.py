"""When each operation begins and ends."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

MINUTES_PER_HOUR = 60
HOURS_PER_DAY = 24


@dataclass(frozen=True, kw_only=True)
class Slot:
    """From when to when, in minutes after midnight."""

    start_min: int
    end_min: int


def slots(starts_at: str, durations_min: Sequence[int], turnover_min: int) -> tuple[Slot, ...]:
    """One after the other, with the turnover between two."""
    found: list[Slot] = []
    start = minutes(starts_at)
    for duration in durations_min:
        found.append(Slot(start_min=start, end_min=start + duration))
        start = found[-1].end_min + turnover_min
    return tuple(found)


def minutes(clock: str) -> int:
    """``08:30`` as minutes after midnight."""
    hours, rest = clock.split(":")
    return int(hours) * MINUTES_PER_HOUR + int(rest)


def clock_words(after_midnight_min: int) -> str:
    """``08:30``, or ``00:15 next day``."""
    hours, rest = divmod(after_midnight_min, MINUTES_PER_HOUR)
    days, hour = divmod(hours, HOURS_PER_DAY)
    return f"{hour:02}:{rest:02}{' next day' if days else ''}"
