"""The abnormal head posture, and whether it fits: whether it puts the eyes where the deviation is smaller.

Chin up puts the eyes in down-gaze, a face turned right in left gaze. A head tilted right is the position of the right
head tilt itself. Published for the chin with A and V patterns; the rest follows from where the eyes are put.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from planner.direction import Direction, direction_of
from planner.figures import pd
from planner.findings.pattern import Pattern, Shape
from planner.measurement import Figure, Measurements
from planner.optics.vector import deviation_of
from planner.precision.limits import difference_limits_pd
from planner.precision.steady import steady
from planner.precision.strength import sign_strength
from planner.provenance import Mark, Provenance
from planner.records.examination import Correction, Gaze, Range
from planner.records.motility import Chin, Side
from planner.thresholds import same
from planner.values.statement import Finding, Strength

CHIN_TABLE = Provenance(
    mark=Mark.PUBLISHED,
    source="PMC4330283, Table 1: chin up with A-esotropia and V-exotropia, down with A-exotropia and V-esotropia",
)
GEOMETRY = Provenance(
    mark=Mark.COMPUTED, source="the posture fits if the deviation is smaller where it puts the eyes than opposite"
)
TILT = Provenance(
    mark=Mark.PUBLISHED,
    source=(
        "J AAPOS 2009;13:132-5: in 20 superior oblique palsies tilting away from the palsy took 6.4 +- 3.9 Δ off the "
        "hyper; that the tilt fits where the vertical is smaller is computed"
    ),
)
OTHER_CAUSES = "Measure where the posture puts the eyes and opposite; look for nystagmus, ptosis and a stiff neck."
CHIN_FOR = {
    (Shape.A, Direction.ESO): Chin.UP,
    (Shape.V, Direction.EXO): Chin.UP,
    (Shape.A, Direction.EXO): Chin.DOWN,
    (Shape.V, Direction.ESO): Chin.DOWN,
}
"""The chin posture that a pattern makes, as printed."""


Sizes = tuple[float, float, float]
"""The deviation where the posture puts the eyes, that opposite, and the 95 % limits of their difference."""


def find(measurements: Measurements, correction: Correction, pattern: Pattern) -> Iterator[Finding]:
    """A sentence for each part of the posture: turn, tilt, chin."""
    posture = measurements.examination.head_posture
    if posture is None:
        return
    positions = _Positions(measurements, correction)
    if posture.turn is not None:
        used, opposite = (Gaze.LEFT, Gaze.RIGHT) if posture.turn is Side.RIGHT else (Gaze.RIGHT, Gaze.LEFT)
        fit = _compared(positions.both(used, opposite), used, opposite, GEOMETRY)
        yield _finding("face_turn", f"Face turned {posture.turn}", posture.turn_deg, fit)
    if posture.tilt is not None:
        tilts = (Gaze.TILT_RIGHT, Gaze.TILT_LEFT)
        used, opposite = tilts if posture.tilt is Side.RIGHT else tilts[::-1]
        fit = _compared(positions.verticals(used, opposite), used, opposite, TILT)
        yield _finding("head_tilt", f"Head tilted {posture.tilt}", posture.tilt_deg, fit)
    if posture.chin is not None:
        fit = _of_pattern(positions, posture.chin, pattern) or _of_chin(positions, posture.chin)
        yield _finding("chin_posture", f"Chin {posture.chin}", posture.chin_deg, fit)


@dataclass(frozen=True)
class _Positions:
    measurements: Measurements
    correction: Correction

    def horizontal(self, gaze: Gaze) -> Figure | None:
        return self.measurements.horizontal(gaze, Range.DISTANCE, self.correction)

    def vertical(self, gaze: Gaze) -> Figure | None:
        return self.measurements.vertical(gaze, Range.DISTANCE, self.correction)

    def both(self, used: Gaze, opposite: Gaze) -> Sizes | None:
        """Horizontal and vertical as one; the verticals alone where a horizontal is missing."""
        here, there = self.horizontal(used), self.horizontal(opposite)
        if here is None or there is None:
            return self.verticals(used, opposite)
        limits_pd = difference_limits_pd(here.limits, there.limits)
        return self._size_pd(here, used), self._size_pd(there, opposite), limits_pd

    def verticals(self, used: Gaze, opposite: Gaze) -> Sizes | None:
        here, there = self.vertical(used), self.vertical(opposite)
        if here is None or there is None:
            return None
        return abs(here.value_pd), abs(there.value_pd), difference_limits_pd(here.limits, there.limits)

    def _size_pd(self, horizontal: Figure, gaze: Gaze) -> float:
        vertical = self.vertical(gaze)
        return deviation_of(horizontal.value_pd, vertical.value_pd if vertical else 0.0).size_pd


@dataclass(frozen=True, kw_only=True)
class _Fit:
    """``fits`` is None where it cannot be told."""

    fits: bool | None
    why: str
    strength: Strength
    provenance: Provenance
    facts: dict[str, str | float]


def _compared(sizes: Sizes | None, used: Gaze, opposite: Gaze, provenance: Provenance) -> _Fit:
    if sizes is None:
        why = f"the deviation was not measured both {used.words} and {opposite.words}"
        return _Fit(fits=None, why=why, strength=Strength.CANNOT_TELL, provenance=provenance, facts={})
    here_pd, there_pd, limits_pd = sizes
    smaller_pd = steady(there_pd - here_pd, 1)
    strength = sign_strength(smaller_pd, limits_pd)
    facts: dict[str, str | float] = {"smaller_by_pd": smaller_pd, "limits_pd": limits_pd}
    if strength is Strength.CANNOT_TELL:
        why = f"{used.words} and {opposite.words} the deviation is the same within measurement error"
        return _Fit(fits=None, why=why, strength=strength, provenance=provenance, facts=facts)
    size = "smaller" if smaller_pd > 0 else "larger"
    why = f"the deviation is {pd(smaller_pd)} {size} {used.words} than {opposite.words}"
    return _Fit(fits=smaller_pd > 0, why=why, strength=strength, provenance=provenance, facts=facts)


def _of_pattern(positions: _Positions, chin: Chin, pattern: Pattern) -> _Fit | None:
    """By the printed table; None where there is no A or V of an eso- or exodeviation."""
    ahead = positions.horizontal(Gaze.PRIMARY)
    if ahead is None or same(ahead.value_pd, 0):
        return None
    direction = direction_of(ahead.value_pd)
    fitting = CHIN_FOR.get((pattern.shape, direction))
    if fitting is None:
        return None
    letter = "an A" if pattern.shape is Shape.A else "a V"
    return _Fit(
        fits=chin is fitting,
        why=f"chin {fitting} is what {letter} pattern with {direction.words} makes",
        strength=pattern.statement.strength,
        provenance=CHIN_TABLE,
        facts={"shape": pattern.shape.value, "fitting_chin": fitting.value},
    )


def _of_chin(positions: _Positions, chin: Chin) -> _Fit:
    used, opposite = (Gaze.DOWN, Gaze.UP) if chin is Chin.UP else (Gaze.UP, Gaze.DOWN)
    return _compared(positions.both(used, opposite), used, opposite, GEOMETRY)


def _finding(code: str, posture: str, by_deg: float | None, fit: _Fit) -> Finding:
    how = posture if by_deg is None else f"{posture} by {by_deg:g} degrees"
    verdict = {True: "it fits", False: "it does not fit", None: "whether it fits cannot be told"}[fit.fits]
    return Finding(
        code=code,
        text=f"{how}: {verdict}; {fit.why}.",
        provenance=fit.provenance,
        facts={**fit.facts, "fits": {True: "yes", False: "no", None: "cannot tell"}[fit.fits]},
        strength=fit.strength,
        settle="" if fit.fits and fit.strength is Strength.CLEAR else OTHER_CAUSES,
    )
