"""Both eyes with all their muscles, the operated ones marked, in one view."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from planner.anatomy import Eye, Muscle
from planner.pictures import labels
from planner.pictures.brush import FINE, Brush
from planner.pictures.frame import HEIGHT_MM, MIDDLE, WIDTH_MM, Frame
from planner.pictures.muscles import CORNEA_MM, middle, run
from planner.pictures.operations import DRAWINGS
from planner.pictures.work import Work
from planner.values.option import OffsetDirection
from planner.values.picture import Disc, Fill, Label, Mark, Picture, Stroke, View

UNDER: Final = (Muscle.SO, Muscle.IO, Muscle.MR, Muscle.LR, Muscle.SR, Muscle.IR)
"""Order of drawing: the obliques lie under the recti."""

GLOBE_MM: Final = 17.5
NOSE: Final = (0.0, -10.0)
TITLES: Final = {
    View.FACING: "Facing the patient",
    View.FROM_THE_HEAD: "From the head of the table, as the surgeon sits",
}
EDGES: Final = {
    View.FACING: ("patient's head", "patient's feet"),
    View.FROM_THE_HEAD: ("patient's feet", "patient's head"),
}
"""What lies beyond the upper and the lower edge."""


def both_eyes(works: Sequence[Work], view: View) -> Picture:
    """The picture of a plan."""
    frame = Frame(view)
    spoken = "; ".join(work.spoken for work in works) or "no muscle marked"
    return Picture(
        view=view,
        title=TITLES[view],
        spoken=f"Both eyes, {view}: {spoken}",
        width_mm=WIDTH_MM,
        height_mm=HEIGHT_MM,
        marks=(
            *_edges(frame),
            *(mark for eye in Eye for mark in _eye(frame, eye, {w.muscle: w for w in works if w.eye is eye})),
        ),
    )


def _edges(frame: Frame) -> Iterator[Label]:
    upper, lower = EDGES[frame.view]
    yield Label(x=MIDDLE[0], y=3.0, words=upper, size_mm=3.2)
    yield Label(x=MIDDLE[0], y=HEIGHT_MM - 3.5, words=lower, size_mm=3.2)
    x, y = frame.point(NOSE)
    yield Label(x=x, y=y, words="nose", size_mm=3.2)


def _eye(frame: Frame, eye: Eye, works: dict[Muscle, Work]) -> Iterator[Mark]:
    x, y = frame.point(middle(eye))
    yield Disc(x=x, y=y, radius_mm=GLOBE_MM, weight_mm=FINE)
    for muscle in UNDER:
        brush = Brush(frame, run(eye, muscle))
        if muscle not in works:
            yield brush.band(0.0, brush.run.length_mm, fill=Fill.PAGE, quiet=True)
            yield labels.name(frame, eye, muscle)
    for muscle in UNDER:
        if muscle in works:
            yield from _worked(frame, works[muscle])
    yield Disc(x=x, y=y, radius_mm=CORNEA_MM, weight_mm=0.6, fill=Fill.PAGE)
    yield Disc(x=x, y=y, radius_mm=2.0, weight_mm=0.3, fill=Fill.INK)
    for muscle in UNDER:
        if muscle in works:
            yield from labels.words(frame, works[muscle])
    yield Label(x=x, y=HEIGHT_MM - 3.5, words=f"{eye.upper()} eye", size_mm=5.0, bold=True)


def _worked(frame: Frame, work: Work) -> Iterator[Stroke]:
    brush = Brush(frame, run(work.eye, work.muscle))
    yield from DRAWINGS[work.operation](brush, work)
    if work.offset:
        yield from _offset(brush, work)


def _offset(brush: Brush, work: Work) -> Iterator[Stroke]:
    """Up is towards the patient's head in every view."""
    x, y = brush.run.at((work.mm or 0.0) + 3.5)
    way = -1 if work.offset is OffsetDirection.UP else 1
    yield from brush.straight((x, y - way * 5.5), (x, y + way * 6.5))
