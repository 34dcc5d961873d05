"""Signs that a superior oblique palsy is on both sides, looked for only where one is suspected on one side."""

from __future__ import annotations

from dataclasses import dataclass

from planner.anatomy import Muscle
from planner.findings.finding import finding
from planner.findings.three_step import Palsy
from planner.findings.torsion import Torsion
from planner.measurement import Figure, Measurements
from planner.palsy.bilateral import EXCYCLO_DEG, BilateralEvidence, BilateralSigns, Suspicion, bilateral_signs
from planner.records.diagnosis import Diagnosis
from planner.records.examination import Correction, Examination, Gaze, Range
from planner.thresholds import exceeds
from planner.values.statement import Finding, Strength


@dataclass(frozen=True, kw_only=True)
class Bilateral:
    """``signs`` is None where no superior oblique palsy is suspected."""

    signs: BilateralSigns | None
    statements: tuple[Finding, ...]


def find(measurements: Measurements, correction: Correction, palsy: Palsy, torsion: Torsion) -> Bilateral:
    """The signs, where the three-step test, the diagnosis, a version or torsion points to a superior oblique."""
    if not _is_suspected(measurements.examination, palsy, torsion):
        return Bilateral(signs=None, statements=())

    def horizontal(gaze: Gaze) -> float | None:
        return _value(measurements.horizontal(gaze, Range.DISTANCE, correction))

    def vertical(gaze: Gaze) -> float | None:
        return _value(measurements.vertical(gaze, Range.DISTANCE, correction))

    signs = bilateral_signs(
        BilateralEvidence(
            up_horizontal_pd=horizontal(Gaze.UP),
            down_horizontal_pd=horizontal(Gaze.DOWN),
            excyclotorsion_deg=torsion.ahead_deg,
            excyclotorsion_down_deg=torsion.down_deg,
            primary_vertical_pd=vertical(Gaze.PRIMARY),
            right_vertical_pd=vertical(Gaze.RIGHT),
            left_vertical_pd=vertical(Gaze.LEFT),
            tilt_right_vertical_pd=vertical(Gaze.TILT_RIGHT),
            tilt_left_vertical_pd=vertical(Gaze.TILT_LEFT),
        )
    )
    present = [sign for sign in signs.signs if sign.present]
    overall = finding(signs.statement, _strength(signs), " ".join(signs.settle))
    return Bilateral(signs=signs, statements=(overall, *(finding(each.statement, each.strength) for each in present)))


def _is_suspected(examination: Examination, palsy: Palsy, torsion: Torsion) -> bool:
    weak = palsy.test.weak if palsy.test else None
    largest_deg = max(torsion.ahead_deg or 0.0, torsion.down_deg or 0.0)
    return (
        (weak is not None and weak.muscle is Muscle.SO)
        or any(each.diagnosis is Diagnosis.FOURTH_NERVE_PALSY for each in examination.diagnoses)
        or any(each.muscle is Muscle.SO and each.grade < 0 for each in examination.versions)
        or exceeds(largest_deg, EXCYCLO_DEG)
    )


def _value(figure: Figure | None) -> float | None:
    return figure.value_pd if figure else None


def _strength(signs: BilateralSigns) -> Strength:
    """No sign excludes it, so only a suspicion with a clear sign is clear."""
    if signs.suspicion is Suspicion.NOT_TESTED:
        return Strength.CANNOT_TELL
    clear = any(sign.present and sign.strength is Strength.CLEAR for sign in signs.signs)
    return Strength.CLEAR if signs.suspicion is Suspicion.SUSPECTED and clear else Strength.BORDERLINE
