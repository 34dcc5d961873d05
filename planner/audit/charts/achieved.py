"""What was corrected against what the plan expected to correct."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from math import floor, sqrt

from planner.audit.words import dioptres, plain
from planner.charts import Chart, Identity, Point, Points, Shape, alike, draw
from planner.results.report import Pair, Report
from planner.statistics import summary
from planner.values.audit import Charted, Figures

TITLE = "Achieved against expected"
MOST_RINGS = 250
CELL_PD = 4.0
ROW_PD = 10.0


def achieved(report: Report) -> Charted:
    """A ring for each case and the identity line; where there are too many, a ring for each 4 Δ by 4 Δ, by number."""
    beyond = report.beyond
    says = (
        "On the line, as much was corrected as the plan expected; above it more, below it less.",
        (
            f"Achieved minus expected: mean {dioptres(beyond.mean)}, standard deviation {plain(beyond.sd)}, "
            f"{beyond.cases} seen."
        ),
    )
    return Charted(
        code="achieved",
        title=TITLE,
        picture=draw(_chart(report.pairs, says)) if report.pairs else None,
        says=says if report.pairs else ("Nobody was seen in the window.",),
        figures=Figures(
            title=TITLE,
            columns=("Expected, Δ", "Cases", "Mean achieved", "Achieved minus expected", "Standard deviation"),
            rows=tuple(_rows(report.pairs)),
        ),
    )


def _chart(pairs: Sequence[Pair], says: tuple[str, ...]) -> Chart:
    figures = [figure for pair in pairs for figure in (pair.expected_pd, pair.achieved_pd, 0.0)]
    across, upright = alike("Expected correction, Δ", "Achieved correction, Δ", figures)
    return Chart(
        title=TITLE,
        spoken=f"{TITLE}: {len(pairs)} cases around the identity line. {says[1]}",
        horizontal=across,
        upright=upright,
        layers=(Identity(name="as expected"), _points(pairs)),
        plot_mm=84.0,
    )


def _points(pairs: Sequence[Pair]) -> Points:
    if len(pairs) <= MOST_RINGS:
        points = tuple(Point(x=pair.expected_pd, y=pair.achieved_pd, size=0.8) for pair in pairs)
        return Points(name="one case", shape=Shape.RING, points=points)
    cells = Counter((floor(pair.expected_pd / CELL_PD), floor(pair.achieved_pd / CELL_PD)) for pair in pairs)
    most = max(cells.values())
    points = tuple(
        Point(x=(x + 0.5) * CELL_PD, y=(y + 0.5) * CELL_PD, size=0.3 + 1.2 * sqrt(count / most))
        for (x, y), count in sorted(cells.items())
    )
    return Points(name=f"cases within 4 Δ, by area; largest {most}", shape=Shape.RING, points=points)


def _rows(pairs: Sequence[Pair]) -> Iterator[tuple[str, ...]]:
    groups: dict[int, list[Pair]] = {}
    for pair in pairs:
        groups.setdefault(floor(pair.expected_pd / ROW_PD), []).append(pair)
    for row in sorted(groups):
        mine = groups[row]
        beyond = summary([pair.achieved_pd - pair.expected_pd for pair in mine])
        yield (
            f"{row * ROW_PD:g} to under {(row + 1) * ROW_PD:g}".replace("-", "\N{MINUS SIGN}"),
            str(len(mine)),
            dioptres(summary([pair.achieved_pd for pair in mine]).mean),
            dioptres(beyond.mean),
            plain(beyond.sd),
        )
