"""The watch over failures, case by case, with how often it errs."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.audit.question import Question
from planner.audit.words import percent
from planner.charts import Chart, Level, Line, Point, Points, Shape, draw, round_axis
from planner.precision.steady import steady
from planner.results.grouping import Watched
from planner.results.result import Result
from planner.values.audit import Charted, Figures

TITLE = "Watch over failures"
MOST_PLACES = 400
HALF_YEAR = 6


def watched(found: Watched, results: Sequence[Result], asked: Question) -> Charted:
    """The sum after each case that was judged; a call where it reaches the limit, after which it begins anew."""
    lengths = found.run_lengths
    says = (
        (
            f"Failures are expected in {percent(asked.failures_expected)}; it looks for "
            f"{percent(asked.failures_worse)} or more. Each failure lifts the line, each success lowers it."
        ),
        (
            f"How often it errs: where failures are as expected it calls falsely once in about "
            f"{steady(lengths.false_call_cases, 0):.0f} cases; where they are as bad as looked for, it calls "
            f"after about {steady(lengths.true_call_cases, 0):.0f} cases on average."
        ),
        _called(len(found.calls), len(found.ids)),
    )
    return Charted(
        code="watch",
        title=TITLE,
        picture=draw(_chart(found, says)) if found.ids else None,
        says=says,
        figures=Figures(
            title=TITLE,
            columns=("Operated in", "Cases judged", "Calls", "Highest sum", "Sum at the end"),
            rows=tuple(_rows(found, results)),
        ),
    )


def _called(calls: int, judged: int) -> str:
    times = f"called {calls} time{'' if calls == 1 else 's'}" if calls else "did not call"
    return f"It {times} in {judged} cases judged."


def _chart(found: Watched, says: tuple[str, ...]) -> Chart:
    called = set(found.calls)
    numbered = [(float(number), level) for number, level in enumerate(found.levels, start=1)]
    calls = tuple(
        Point(x=number, y=level, words=f"case {number:.0f}")
        for (number, level), id_ in zip(numbered, found.ids, strict=True)
        if id_ in called
    )
    return Chart(
        title=TITLE,
        spoken=f"{TITLE}: a line over {len(found.ids)} cases against a limit. {' '.join(says)}",
        horizontal=round_axis("Cases judged, in the order of operation", [0.0, float(len(found.ids))]),
        upright=round_axis("Sum", [0.0, found.limit, *found.levels]),
        layers=(
            Level(name="limit", at=found.limit),
            Line(name="sum after each case", places=((0.0, 0.0), *_thinned(numbered))),
            Points(name="call", shape=Shape.TRIANGLE, points=calls),
        ),
    )


def _thinned(places: Sequence[tuple[float, float]]) -> Iterator[tuple[float, float]]:
    """The lowest and the highest of as many neighbours as are needed, so that no call is lost."""
    together = max(1, -(-2 * len(places) // MOST_PLACES))
    for start in range(0, len(places), together):
        some = places[start : start + together]
        yield from sorted({min(some, key=lambda place: place[1]), max(some, key=lambda place: place[1])})


def _rows(found: Watched, results: Sequence[Result]) -> Iterator[tuple[str, ...]]:
    months = {result.id: result.operated_on for result in results}
    calls = set(found.calls)
    halves: dict[str, list[tuple[str, float]]] = {}
    for id_, level in zip(found.ids, found.levels, strict=True):
        year, month = months[id_][:4], int(months[id_][5:7])
        name = f"{year}, {'first' if month <= HALF_YEAR else 'second'} half"
        halves.setdefault(name, []).append((id_, level))
    for name, some in halves.items():
        yield (
            name,
            str(len(some)),
            str(sum(id_ in calls for id_, _ in some)),
            f"{steady(max(level for _, level in some), 2):g}",
            f"{steady(some[-1][1], 2):g}",
        )
