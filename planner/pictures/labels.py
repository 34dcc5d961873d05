"""Where the words of a muscle stand, so that no two muscles' words meet."""

from __future__ import annotations

from planner.anatomy import Eye, Muscle
from planner.pictures.frame import Frame
from planner.pictures.muscles import middle, nasal, run
from planner.pictures.work import Work
from planner.values.picture import Label

LEADING_MM = 4.3
SIZE_MM, SMALL_MM, NAME_MM = 4.0, 3.1, 2.9

WORDS_AT = {
    Muscle.SO: (30.5, -23.5, -1),
    Muscle.SR: (-6.5, -21.0, -1),
    Muscle.MR: (30.5, 6.0, -1),
    Muscle.LR: (-33.5, -8.0, 1),
    Muscle.IR: (-6.5, 20.5, -1),
    Muscle.IO: (30.5, 22.5, -1),
}
"""The edge of the words next to the horizontal muscles as (towards the nose, down), and the way they run, nose +.

They grow away from there, so that more words never cover a muscle.
"""
NAMED_AT_ITS_INSERTION = Muscle.IO
"""At its far end the words of the medial rectus stand."""


def words(frame: Frame, work: Work) -> tuple[Label, ...]:
    """Up to four lines: the operation, its figure or where the tendon goes, and the distance from the limbus."""
    said = _lines(work)
    towards_nose, down, runs = WORDS_AT[work.muscle]
    x, y = middle(work.eye)
    side = nasal(work.eye)
    at_x, at_y = frame.point((x + side * towards_nose, y + down))
    grows_down = down * frame.turn > 0
    top = at_y + LEADING_MM / 2 if grows_down else at_y - LEADING_MM * (len(said) - 0.5)
    return tuple(
        Label(
            x=at_x,
            y=round(top + LEADING_MM * number, 2),
            words=each,
            size_mm=SMALL_MM if "limbus" in each else SIZE_MM,
            anchor=frame.anchor(side * runs),
            bold="limbus" not in each,
            clear=True,
        )
        for number, each in enumerate(said)
    )


def name(frame: Frame, eye: Eye, muscle: Muscle) -> Label:
    """The trade's two letters at the far end of the muscle."""
    each = run(eye, muscle)
    x, y = frame.point(each.at(2.4 if muscle is NAMED_AT_ITS_INSERTION else each.length_mm - 2.4))
    return Label(x=x, y=y, words=muscle.value, size_mm=NAME_MM)


def _lines(work: Work) -> list[str]:
    figure = "" if work.mm is None else f"{work.mm:g} mm"
    moved = f"moved {work.offset}" if work.offset else ""
    limbus = "" if work.limbus_mm is None else f"limbus {work.limbus_mm:g} mm"
    return [part for part in (work.operation.words, figure, moved, limbus) if part]
