"""A needle that goes too deep."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from planner.counselling.people import ALL, people
from planner.counselling.saying import origin, says
from planner.provenance import Mark, Provenance
from planner.records.plan import Plan
from planner.values.counselling import Figure, Passage

PERFORATIONS, OPERATED = 728, 554_000
WORST_PERCENT: Final = 2.8
SERIES: Final = Provenance(
    mark=Mark.PUBLISHED, source="survey: 728 of 554,000 muscles (0.13 %); other series up to 2.8 % of cases"
)


def passages(_plan: Plan) -> Iterator[Passage]:
    """For everybody: the survey counted muscles, the highest series patients, and the array shows the latter."""
    worst = round(WORST_PERCENT)
    yield Passage(
        code="perforation",
        heading=says("A needle that goes too deep"),
        sentences=(
            says("The wall of the eye can be pierced while stitches are placed. It can harm the sight."),
            says(
                "In a survey it happened in {muscles} of 10,000 operated muscles; elsewhere in up to {percent} of 100 "
                "people.",
                muscles=f"{PERFORATIONS * 10_000 / OPERATED:.0f}",
                percent=f"{WORST_PERCENT}",
            ),
        ),
        origin=origin(SERIES),
        array=people(
            (
                (Figure.BARRED, worst, says("pierced, in the report with the most")),
                (Figure.OPEN, ALL - worst, says("not pierced, in that report")),
            )
        ),
    )
