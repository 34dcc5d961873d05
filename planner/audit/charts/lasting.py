"""How long success lasts."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.audit.words import NOTHING, interval, percent
from planner.charts import Band, Chart, Line, days_axis, draw, round_axis, steps
from planner.charts.axis import DAYS_OF_A_MONTH
from planner.results.lasting import Lasting, Outside
from planner.statistics import Followed, Step
from planner.values.audit import Charted, Figures

TITLE = "How long success lasts"
MONTHS = (1, 3, 6, 12, 24, 36, 60, 120)
SHORTEST_DAYS = 60.0


def lasting(found: Lasting, lost: Sequence[Step], first_days: int) -> Charted:
    """The share that is still within 10 Δ, with its interval, of those who were at the first visit that counts."""
    followed = found.followed
    end = max([SHORTEST_DAYS, *(person.days for person in followed)])
    failures = sum(person.failed for person in followed)
    says = (
        (
            f"Of {len(followed)} within 10 Δ at the first visit from day {first_days} on, {failures} lost it; time "
            "runs from that visit, and the others are counted for as long as they were followed."
        ),
        _outside(found),
    )
    return Charted(
        code="lasting",
        title=TITLE,
        picture=draw(_chart(lost, end, says)) if followed else None,
        says=says if followed else (f"Nobody was within 10 Δ at a first visit from day {first_days} on.", says[1]),
        figures=Figures(
            title=TITLE,
            columns=("After", "Still followed", "Share with success", "95 % interval"),
            rows=tuple(_rows(followed, lost, end)),
        ),
    )


def _outside(found: Lasting) -> str:
    counts = ", ".join(f"{found.outside.count(why)} {why.value}" for why in Outside)
    return f"Not in this chart: {counts}."


def _chart(lost: Sequence[Step], end: float, says: tuple[str, ...]) -> Chart:
    shares = [(0.0, 100.0), *((step.days, step.share * 100) for step in lost)]
    bounds = [(step.days, step.low * 100, step.high * 100) for step in lost if step.low is not None and step.high]
    return Chart(
        title=TITLE,
        spoken=f"{TITLE}, in steps with an interval. {' '.join(says)}",
        horizontal=days_axis("Since the first visit that counts", end),
        upright=round_axis("Still within 10 Δ, %", [0.0, 100.0]),
        layers=(
            Band(name="95 % interval", edges=_triples(steps(bounds, end))),
            Line(name="share with success", places=_pairs(steps(shares, end)), weight_mm=0.8),
        ),
    )


def _pairs(places: Sequence[tuple[float, ...]]) -> tuple[tuple[float, float], ...]:
    return tuple((x, y) for x, y in places)


def _triples(places: Sequence[tuple[float, ...]]) -> tuple[tuple[float, float, float], ...]:
    return tuple((x, low, high) for x, low, high in places)


def _rows(followed: Sequence[Followed], lost: Sequence[Step], end: float) -> Iterator[tuple[str, ...]]:
    for months in MONTHS:
        day = months * DAYS_OF_A_MONTH
        if not followed or day > end:
            return
        step = next((each for each in reversed(lost) if each.days <= day), None)
        yield (
            f"{months} month{'' if months == 1 else 's'}",
            str(sum(person.days >= day for person in followed)),
            percent(step.share) if step else percent(1.0),
            interval(step.low, step.high) if step else NOTHING,
        )
