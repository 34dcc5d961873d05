"""A vertical deviation that a horizontal operation leaves as it is."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.findings.size import vertical_words
from planner.measurement import Figure
from planner.provenance import Mark, Provenance
from planner.records.examination import Gaze
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
    figures = [figure for figure in situation.measurements.verticals.values() if not same(figure.value_pd, 0)]
    ahead = [figure for figure in figures if figure.reading.gaze is Gaze.PRIMARY]
    elsewhere = [figure for figure in figures if figure.reading.gaze is not Gaze.PRIMARY]
    if ahead:
        worst = max(ahead, key=_size_pd)
        yield _notice("vertical_not_answered", worst, _level(worst))
    if elsewhere and not any(_is_operable(figure) for figure in ahead):
        worst = max(elsewhere, key=_size_pd)
        if _is_operable(worst):
            yield _notice("vertical_elsewhere_not_answered", worst, Level.CAUTION)


def _size_pd(figure: Figure) -> float:
    return abs(figure.value_pd)


def _is_operable(figure: Figure) -> bool:
    return reaches(_size_pd(figure), SMALLEST_OPERATION_PD)


def _level(figure: Figure) -> Level:
    return Level.CAUTION if _is_operable(figure) else Level.NOTE


def _notice(code: str, figure: Figure, level: Level) -> Notice:
    where = f"{figure.reading.gaze.words} at {figure.reading.range}"
    return Notice(
        code=code,
        text=f"{vertical_words(figure.value_pd)} {where} is not answered by this operation.",
        provenance=OPERABLE,
        facts={"vertical_pd": figure.value_pd, "operable_from_pd": SMALLEST_OPERATION_PD},
        level=level,
    )
