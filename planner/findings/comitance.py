"""Comitance: whether the deviation is the same in side gaze as straight ahead, beyond measurement error."""

from __future__ import annotations

from dataclasses import dataclass

from planner.figures import pd
from planner.measurement import Figure, Measurements
from planner.precision.change import RealChange, real_change
from planner.precision.limits import HOLMES
from planner.precision.strength import sign_strength
from planner.provenance import Mark, Provenance
from planner.records.examination import Correction, Gaze, Range
from planner.thresholds import reaches
from planner.values.statement import Finding, Strength

NOT_MEASURED = Provenance(mark=Mark.MEASURED, source="side gaze and primary position are not both in this examination")
MISSING = "Measure right and left gaze at distance."
AGAIN = "Measure side gaze again, further out, and the ductions of either eye."


@dataclass(frozen=True, kw_only=True)
class Comitance:
    """``comitant`` is None where no side gaze was measured; ``difference_pd`` is the largest difference found."""

    comitant: bool | None
    difference_pd: float | None
    statement: Finding


def find(measurements: Measurements, correction: Correction) -> Comitance:
    """Right and left gaze against straight ahead, at distance, with one correction."""
    ahead = measurements.horizontal(Gaze.PRIMARY, Range.DISTANCE, correction)
    sides = {gaze: measurements.horizontal(gaze, Range.DISTANCE, correction) for gaze in (Gaze.RIGHT, Gaze.LEFT)}
    taken = {gaze: side for gaze, side in sides.items() if side is not None}
    if ahead is None or not taken:
        text = "Side gazes were not measured: whether the deviation is comitant cannot be told."
        statement = Finding(
            code="comitance_not_measured",
            text=text,
            provenance=NOT_MEASURED,
            facts={},
            strength=Strength.CANNOT_TELL,
            settle=MISSING,
        )
        return Comitance(comitant=None, difference_pd=None, statement=statement)
    changes = {gaze: _change(ahead, side) for gaze, side in taken.items()}
    threshold_pd = max(change.threshold_pd for change in changes.values())
    differences = {gaze: change.difference_pd for gaze, change in changes.items()}
    beyond = [gaze for gaze, difference_pd in differences.items() if reaches(abs(difference_pd), threshold_pd)]
    widest_pd = max(abs(difference_pd) for difference_pd in differences.values())
    small = sign_strength(widest_pd, threshold_pd) is Strength.CANNOT_TELL
    strength = Strength.CLEAR if beyond or small else Strength.BORDERLINE
    statement = Finding(
        code="comitance",
        text=_words(beyond, differences, widest_pd, threshold_pd),
        provenance=HOLMES,
        facts={
            "widest_pd": widest_pd,
            "threshold_pd": threshold_pd,
            **{f"{gaze}_minus_primary_pd": difference_pd for gaze, difference_pd in differences.items()},
        },
        strength=strength,
        settle="" if strength is Strength.CLEAR else AGAIN,
    )
    return Comitance(comitant=not beyond, difference_pd=widest_pd, statement=statement)


def _change(ahead: Figure, side: Figure) -> RealChange:
    method = max(ahead.reading.method, side.reading.method, key=lambda each: each.rank)
    return real_change(ahead.value_pd, side.value_pd, Range.DISTANCE, method=method)


def _words(beyond: list[Gaze], differences: dict[Gaze, float], widest_pd: float, threshold_pd: float) -> str:
    limit = f"{pd(threshold_pd)} or more is beyond measurement error"
    if not beyond:
        return f"Comitant in side gaze: straight ahead and side gaze differ by {pd(widest_pd)} at most ({limit})."
    if len(beyond) > 1:
        return f"Incomitant: both side gazes differ from straight ahead, by {pd(widest_pd)} at most ({limit})."
    (gaze,) = beyond
    more = "more eso (less exo)" if differences[gaze] > 0 else "less eso (more exo)"
    return f"Incomitant: {pd(widest_pd)} {more} in {gaze} gaze than straight ahead ({limit})."
