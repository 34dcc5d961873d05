"""A course in words, for who does not see its picture."""

from __future__ import annotations

from collections.abc import Iterator

from planner.followup.drawing.words import deviation
from planner.precision.limits import Direction
from planner.values.follow_up import Line

HELD = {None: "", True: ", inside what was expected", False: ", outside what was expected"}


def spoken(title: str, direction: Direction, line: Line) -> str:
    """One sentence for each figure of the picture."""
    return f"{title}. {'; '.join(_parts(direction, line))}."


def _parts(direction: Direction, line: Line) -> Iterator[str]:
    if line.before_pd is not None:
        yield f"Before surgery {deviation(direction, line.before_pd)}"
    if line.expected is not None:
        low, mean, high = (
            deviation(direction, each) for each in (line.expected.low_pd, line.expected.mean_pd, line.expected.high_pd)
        )
        yield f"expected {mean}, between {low} and {high}"
    if not line.points:
        yield "not measured since"
    for point in line.points:
        yield f"{point.at}, day {point.days_after}: {deviation(direction, point.value_pd)}{HELD[point.is_inside]}"
