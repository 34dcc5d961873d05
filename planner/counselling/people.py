"""A hundred small figures in ten rows of ten, so that a row is one in ten."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from planner.values.counselling import Figure, IconArray, IconGroup, Said
from planner.values.picture import Disc, Fill, Mark, Stroke

ALL: Final = 100
A_ROW: Final = 10
ACROSS_MM, DOWN_MM = 6.0, 8.0
HEAD_MM: Final = 1.15
LINE_MM: Final = 0.35
Counted = tuple[Figure, int, Said]


def people(groups: Sequence[Counted]) -> IconArray:
    """The array of the groups in their order; their counts add to a hundred."""
    figures = [figure for figure, count, _ in groups for _ in range(count)]
    if len(figures) != ALL:
        raise ValueError(f"{len(figures)} figures are not a hundred")
    return IconArray(
        groups=tuple(
            IconGroup(figure=figure, count=count, words=words, sample=tuple(_person(figure, 0.0, 0.0)))
            for figure, count, words in groups
        ),
        width_mm=A_ROW * ACROSS_MM,
        height_mm=ALL // A_ROW * DOWN_MM,
        marks=tuple(
            mark
            for place, figure in enumerate(figures)
            for mark in _person(figure, place % A_ROW * ACROSS_MM, place // A_ROW * DOWN_MM)
        ),
    )


def to_a_hundred(shares: Sequence[float]) -> tuple[int, ...]:
    """Whole numbers that add to a hundred, each as near its share (in per cent) as that allows: largest remainders.

    Where shares add to somewhat more or less than a hundred by their own rounding, the largest takes the difference.
    """
    whole = [int(share) for share in shares]
    order = sorted(range(len(shares)), key=lambda place: (whole[place] - shares[place], place))
    for place in order[: max(0, ALL - sum(whole))]:
        whole[place] += 1
    whole[max(range(len(shares)), key=lambda place: (shares[place], -place))] += ALL - sum(whole)
    return tuple(whole)


def _person(figure: Figure, left: float, top: float) -> Iterator[Mark]:
    """A head and a body; a bar or a cross over it, or nothing."""
    fill = Fill.INK if figure is Figure.FULL else Fill.NONE
    middle = left + ACROSS_MM / 2
    yield Disc(x=middle, y=top + 1.7, radius_mm=HEAD_MM, weight_mm=LINE_MM, fill=fill)
    body = ((-1.7, 3.3), (1.7, 3.3), (1.2, 7.2), (-1.2, 7.2))
    yield Stroke(
        points=tuple((round(middle + x, 2), round(top + y, 2)) for x, y in body),
        weight_mm=LINE_MM,
        closed=True,
        quiet=figure is Figure.OPEN,
        fill=fill,
    )
    for line in LINES[figure]:
        yield Stroke(points=tuple((round(middle + x, 2), round(top + y, 2)) for x, y in line), weight_mm=0.9)


LINES: Final[dict[Figure, tuple[tuple[tuple[float, float], ...], ...]]] = {
    Figure.FULL: (),
    Figure.OPEN: (),
    Figure.BARRED: (((-2.4, 5.2), (2.4, 5.2)),),
    Figure.CROSSED: (((-2.2, 3.2), (2.2, 7.3)), ((2.2, 3.2), (-2.2, 7.3))),
}
