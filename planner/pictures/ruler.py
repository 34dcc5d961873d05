"""One muscle's distances from the limbus as a strip to scale: where its insertion is, and where it goes."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from planner.pictures.work import Work
from planner.values.option import Operation
from planner.values.picture import Anchor, Fill, Label, Mark, Picture, Stroke, View

WIDTH_MM: Final = 34.0
HEIGHT_MM: Final = 8.4
ZERO_MM: Final = 3.0
LINE_MM: Final = 4.6
SHORTEST_MM: Final = 15
BEYOND_MM: Final = 2
LABEL_MM: Final = 6.0


def ruler(work: Work) -> Picture | None:
    """The strip of a muscle with a figure from the limbus; None for any other.

    Millimetres of arc along the eye; the limbus is 0, at the beginning of the strip whatever the eye and the view.
    """
    if work.limbus_mm is None or work.insertion_mm is None:
        return None
    return Picture(
        view=View.ALONG_THE_EYE,
        title="Along the eye from the limbus, mm",
        spoken=(
            f"{work.eye.upper()} eye, {work.muscle.words}, along the eye from the limbus: "
            f"insertion at {work.insertion_mm:g} mm, new attachment at {work.limbus_mm:g} mm"
        ),
        width_mm=WIDTH_MM,
        height_mm=HEIGHT_MM,
        marks=tuple(_marks(work, work.insertion_mm, work.limbus_mm)),
    )


def _marks(work: Work, insertion_mm: float, limbus_mm: float) -> Iterator[Mark]:
    end = max(SHORTEST_MM, int(max(insertion_mm, limbus_mm)) + BEYOND_MM)
    yield Stroke(points=((ZERO_MM, LINE_MM), (_x(end, end), LINE_MM)), weight_mm=0.2)
    for tick in range(end + 1):
        x = _x(tick, end)
        reach = 1.3 if tick % 5 == 0 else 0.7
        yield Stroke(points=((x, LINE_MM), (x, LINE_MM + reach)), weight_mm=0.15)
        if tick % 5 == 0:
            yield Label(x=x, y=LINE_MM + 2.6, words=f"{tick}", size_mm=1.8)
    yield Stroke(points=((ZERO_MM, LINE_MM - 2.6), (ZERO_MM, LINE_MM + 1.3)), weight_mm=0.5)
    yield Label(x=ZERO_MM - 1.6, y=LINE_MM - 3.5, words="limbus", size_mm=1.9, anchor=Anchor.START)
    old, new = _x(insertion_mm, end), _x(limbus_mm, end)
    if work.operation is Operation.RECESS:
        yield Stroke(points=((old, LINE_MM - 2.6), (old, LINE_MM)), weight_mm=0.3, dashed=True)
        yield Stroke(points=((old + 0.4, LINE_MM - 1.2), (new - 1.0, LINE_MM - 1.2)), weight_mm=0.25)
        yield Label(x=old, y=LINE_MM - 3.5, words=f"{insertion_mm:g}", size_mm=1.9)
    yield Stroke(
        points=((new, LINE_MM), (new - 0.8, LINE_MM - 2.2), (new + 0.8, LINE_MM - 2.2)),
        weight_mm=0.2,
        closed=True,
        fill=Fill.INK,
    )
    anchor = Anchor.END if new > WIDTH_MM - LABEL_MM else Anchor.MIDDLE
    x = WIDTH_MM if anchor is Anchor.END else new
    yield Label(x=x, y=LINE_MM - 3.5, words=f"{limbus_mm:g} mm", size_mm=2.1, bold=True, anchor=anchor)


def _x(mm: float, end: int) -> float:
    return round(ZERO_MM + mm * (WIDTH_MM - ZERO_MM - 2.5) / end, 2)
