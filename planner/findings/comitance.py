"""Comitance: whether the horizontal deviation is the same in side gaze as straight ahead, beyond measurement error."""

from __future__ import annotations

from dataclasses import dataclass

from planner.figures import pd
from planner.precision.change import REAL_CHANGE_LARGE_PD, REAL_CHANGE_SMALL_PD
from planner.precision.limits import HOLMES, is_large
from planner.precision.steady import steady
from planner.provenance import Mark, Provenance
from planner.records.examination import Examination, Gaze, Range
from planner.thresholds import reaches
from planner.values.proposal import Target
from planner.values.statement import Statement

NOT_MEASURED = Provenance(mark=Mark.MEASURED, source="no side gaze is in this examination")


@dataclass(frozen=True, kw_only=True)
class Comitance:
    """``comitant`` is None where no side gaze was measured; ``difference_pd`` is the largest difference found."""

    comitant: bool | None
    difference_pd: float | None
    statement: Statement


def find(examination: Examination, target: Target) -> Comitance:
    """Right and left gaze at distance against the target, with the target's correction."""
    gazes = {gaze: _horizontal_pd(examination, gaze, target) for gaze in (Gaze.RIGHT, Gaze.LEFT)}
    taken = {gaze: horizontal_pd for gaze, horizontal_pd in gazes.items() if horizontal_pd is not None}
    if not taken:
        text = "Side gazes were not measured: whether the deviation is comitant cannot be told."
        statement = Statement(code="comitance_not_measured", text=text, provenance=NOT_MEASURED, facts={})
        return Comitance(comitant=None, difference_pd=None, statement=statement)
    straight_pd = target.horizontal_pd
    differences = {gaze: steady(found_pd - straight_pd, 1) for gaze, found_pd in taken.items()}
    large = is_large(straight_pd) or any(map(is_large, taken.values()))
    threshold_pd = REAL_CHANGE_LARGE_PD if large else REAL_CHANGE_SMALL_PD
    beyond = [gaze for gaze, difference_pd in differences.items() if reaches(abs(difference_pd), threshold_pd)]
    widest_pd = max(abs(difference_pd) for difference_pd in differences.values())
    statement = Statement(
        code="comitance",
        text=_words(beyond, differences, widest_pd, threshold_pd),
        provenance=HOLMES,
        facts={
            "widest_pd": widest_pd,
            "threshold_pd": threshold_pd,
            **{f"{gaze}_minus_primary_pd": difference_pd for gaze, difference_pd in differences.items()},
        },
    )
    return Comitance(comitant=not beyond, difference_pd=widest_pd, statement=statement)


def _horizontal_pd(examination: Examination, gaze: Gaze, target: Target) -> float | None:
    reading = examination.reading(gaze, Range.DISTANCE, target.reading.correction)
    return reading.horizontal_pd if reading else None


def _words(beyond: list[Gaze], differences: dict[Gaze, float], widest_pd: float, threshold_pd: float) -> str:
    limit = f"{pd(threshold_pd)} or more is beyond measurement error"
    if not beyond:
        return f"Comitant in side gaze: straight ahead and side gaze differ by {pd(widest_pd)} at most ({limit})."
    if len(beyond) > 1:
        return f"Incomitant: both side gazes differ from straight ahead, by {pd(widest_pd)} at most ({limit})."
    (gaze,) = beyond
    more = "more eso (less exo)" if differences[gaze] > 0 else "less eso (more exo)"
    return f"Incomitant: {pd(widest_pd)} {more} in {gaze} gaze than straight ahead ({limit})."
