"""A vertical deviation that a horizontal operation leaves as it is."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.findings.size import vertical_words
from planner.provenance import Mark, Provenance
from planner.records.examination import Gaze, Reading
from planner.situation import Situation
from planner.thresholds import reaches, same
from planner.values.statement import Level, Notice

SMALLEST_OPERATION_PD = 6.0
"""2 mm, the least vertical surgery that is useful (from memory, verify), at 3 Δ per mm (published, Wright)."""

OPERABLE = Provenance(
    mark=Mark.COMPUTED, source="2 mm, the least useful vertical recession (from memory, verify), at 3 Δ/mm (Wright)"
)


def notices(situation: Situation, _draft: Draft) -> Iterator[Notice]:
    """A note for any vertical deviation straight ahead, a caution from 6 Δ on; and one for such a one elsewhere."""
    readings = [reading for reading in situation.examination.readings if _size_pd(reading) > 0]
    ahead = [reading for reading in readings if reading.gaze is Gaze.PRIMARY]
    elsewhere = [reading for reading in readings if reading.gaze is not Gaze.PRIMARY]
    if ahead:
        worst = max(ahead, key=_size_pd)
        if not same(_size_pd(worst), 0):
            yield _notice("vertical_not_answered", worst, _level(worst))
    if elsewhere and not any(_is_operable(reading) for reading in ahead):
        worst = max(elsewhere, key=_size_pd)
        if _is_operable(worst):
            yield _notice("vertical_elsewhere_not_answered", worst, Level.CAUTION)


def _size_pd(reading: Reading) -> float:
    return abs(reading.vertical_pd or 0.0)


def _is_operable(reading: Reading) -> bool:
    return reaches(_size_pd(reading), SMALLEST_OPERATION_PD)


def _level(reading: Reading) -> Level:
    return Level.CAUTION if _is_operable(reading) else Level.NOTE


def _notice(code: str, reading: Reading, level: Level) -> Notice:
    vertical_pd = reading.vertical_pd or 0.0
    where = f"{reading.gaze.words} at {reading.range}"
    return Notice(
        code=code,
        text=f"{vertical_words(vertical_pd)} {where} is not answered by this operation.",
        provenance=OPERABLE,
        facts={"vertical_pd": vertical_pd, "operable_from_pd": SMALLEST_OPERATION_PD},
        level=level,
    )
