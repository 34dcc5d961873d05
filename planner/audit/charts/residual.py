"""The deviation that was left."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from math import ceil

from planner.audit.words import percent, spread
from planner.charts import Bar, Bars, Chart, draw, round_axis
from planner.precision.steady import steady
from planner.results.report import Report
from planner.thresholds import HAIR
from planner.values.audit import Charted, Figures

TITLE = "Deviation left"
MIDDLE_PD = 2.0
WIDE_PD = 4.0
LIMIT_PD = 10.0


def residual(report: Report, left: tuple[float, ...]) -> Charted:
    """Bars of 4 Δ, the middle one around straight; 10 Δ itself lies in the last bar of success, those beyond in ink."""
    counts = Counter(map(_bin, left))
    says = (
        f"At the last visit in the window: {spread(report.residual)}.",
        f"{sum(abs(each) <= LIMIT_PD for each in left)} of {len(left)} within 10 Δ.",
    )
    return Charted(
        code="residual",
        title=TITLE,
        picture=draw(_chart(counts, says)) if left else None,
        says=says if left else ("Nobody was seen in the window.",),
        figures=Figures(
            title=TITLE,
            columns=("Deviation left, Δ", "Cases", "Share"),
            rows=tuple(
                (_words(place), str(counts[place]), percent(counts[place] / len(left))) for place in sorted(counts)
            ),
        ),
    )


def _chart(counts: Mapping[int, int], says: tuple[str, ...]) -> Chart:
    bars = tuple(
        Bar(start=start, end=end, height=float(counts[place]), stands_out=max(-start, end) > LIMIT_PD)
        for place in sorted(counts)
        for start, end in (_edges(place),)
    )
    edges = [edge for bar in bars for edge in (bar.start, bar.end)]
    return Chart(
        title=TITLE,
        spoken=f"{TITLE}, in bars of 4 Δ. {' '.join(says)}",
        horizontal=round_axis("Deviation at distance, Δ: eso +, exo \N{MINUS SIGN}", [*edges, -LIMIT_PD, LIMIT_PD]),
        upright=round_axis("Cases", [0.0, max(float(count) for count in counts.values()), 4.0]),
        layers=(Bars(name="within 10 Δ", outstanding="beyond 10 Δ", bars=bars),),
    )


def _bin(figure: float) -> int:
    """0 up to 2 Δ either way, then one for each 4 Δ; the upper limit belongs to the bin."""
    size = max(0, ceil((abs(figure) - MIDDLE_PD) / WIDE_PD - HAIR))
    return size if figure > 0 else -size


def _edges(place: int) -> tuple[float, float]:
    far = MIDDLE_PD + abs(place) * WIDE_PD
    if place == 0:
        return -far, far
    return (far - WIDE_PD, far) if place > 0 else (-far, WIDE_PD - far)


def _words(place: int) -> str:
    start, end = (steady(abs(edge), 1) for edge in _edges(place))
    if place == 0:
        return f"up to {end:g}, either way"
    near, far = min(start, end), max(start, end)
    return f"{'eso' if place > 0 else 'exo'} over {near:g} to {far:g}"
