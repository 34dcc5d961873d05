"""Both eyes facing the patient, each operated muscle with a number: what it means stands beside the picture.

The trade's words are left out, so that every word on the picture is one that the catalogues translate.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Final

from planner.card.drawing import work_of
from planner.counselling.saying import says
from planner.pictures import both_eyes
from planner.pictures.frame import Frame
from planner.pictures.muscles import run
from planner.values.option import Dose
from planner.values.picture import Disc, Fill, Label, Mark, Picture, View

PICTURE_WORDS: Final = says("Both eyes as seen by somebody who stands before the patient. The numbers are those below.")

WORDS: Final = frozenset(
    said.text
    for said in (
        says("patient's head"),
        says("patient's feet"),
        says("nose"),
        says("RIGHT eye"),
        says("LEFT eye"),
    )
)
"""Labels that stay, to be translated."""

NUMBER_MM: Final = 6.0
FROM_THE_END_MM: Final = 4.5


def facing(doses: Sequence[Dose]) -> Picture:
    """The picture of the doses, numbered in the order given."""
    drawn = both_eyes([work_of(dose) for dose in doses], View.FACING)
    kept = [mark for mark in drawn.marks if not isinstance(mark, Label) or mark.words in WORDS]
    return replace(
        drawn, marks=(*kept, *(mark for number, dose in enumerate(doses, 1) for mark in _number(number, dose)))
    )


def _number(number: int, dose: Dose) -> Iterator[Mark]:
    band = run(dose.eye, dose.muscle)
    x, y = Frame(View.FACING).point(band.at(band.length_mm - FROM_THE_END_MM))
    yield Disc(x=x, y=y, radius_mm=NUMBER_MM * 0.62, weight_mm=0.4, fill=Fill.PAGE)
    yield Label(x=x, y=y, words=f"{number}", size_mm=NUMBER_MM, bold=True)
