"""Torsion by double Maddox rod, against what tells a superior oblique palsy from normal eyes."""

from __future__ import annotations

from dataclasses import dataclass
from math import fsum

from planner.precision.steady import steady
from planner.provenance import Mark, Provenance
from planner.records.examination import Examination
from planner.thresholds import exceeds, reaches, same
from planner.values.statement import Finding, Strength

PALSY_FROM_DEG = 6.0
SPREAD_DEG = 7.0
CUT_OFF = Provenance(
    mark=Mark.PUBLISHED,
    source=(
        "J Pediatr Ophthalmol Strabismus 1993;30:361-7: 6 degrees of excyclotorsion in down-gaze are a superior "
        "oblique palsy with 95 % probability; three readings of one patient differ by up to 7 degrees"
    ),
)
DOWN_NEXT = "Measure torsion in down-gaze, three times, and take the mean."
AGAIN = "Measure torsion three times and take the mean."


@dataclass(frozen=True, kw_only=True)
class Torsion:
    """Excyclotorsion of both eyes together, degrees, incyclotorsion negative; None where it was not measured."""

    ahead_deg: float | None
    down_deg: float | None
    statements: tuple[Finding, ...]


def find(examination: Examination) -> Torsion:
    """The torsion straight ahead, of the eyes that were measured, and in down-gaze."""
    right_deg, left_deg = examination.excyclotorsion_right_deg, examination.excyclotorsion_left_deg
    measured = [value for value in (right_deg, left_deg) if value is not None]
    ahead_deg = steady(fsum(measured), 1) if measured else None
    down_deg = examination.excyclotorsion_down_deg
    if ahead_deg is None and down_deg is None:
        return Torsion(ahead_deg=None, down_deg=None, statements=())
    strength = _strength(ahead_deg, down_deg)
    facts: dict[str, str | float] = {"palsy_from_deg": PALSY_FROM_DEG}
    facts |= {
        name: value
        for name, value in (
            ("excyclotorsion_right_deg", right_deg),
            ("excyclotorsion_left_deg", left_deg),
            ("excyclotorsion_deg", ahead_deg),
            ("excyclotorsion_down_deg", down_deg),
        )
        if value is not None
    }
    statement = Finding(
        code="torsion",
        text=_text(right_deg, left_deg, ahead_deg, down_deg),
        provenance=CUT_OFF,
        facts=facts,
        strength=strength,
        settle="" if strength is Strength.CLEAR else (DOWN_NEXT if down_deg is None else AGAIN),
    )
    return Torsion(ahead_deg=ahead_deg, down_deg=down_deg, statements=(statement,))


def _strength(ahead_deg: float | None, down_deg: float | None) -> Strength:
    """Clear from the tested cut-off in down-gaze on, or beyond the spread of repeated readings."""
    if down_deg is not None and reaches(down_deg, PALSY_FROM_DEG):
        return Strength.CLEAR
    largest_deg = max(abs(value) for value in (ahead_deg, down_deg) if value is not None)
    if exceeds(largest_deg, SPREAD_DEG):
        return Strength.CLEAR
    return Strength.CANNOT_TELL if same(largest_deg, 0) else Strength.BORDERLINE


def _text(right_deg: float | None, left_deg: float | None, ahead_deg: float | None, down_deg: float | None) -> str:
    parts = []
    if ahead_deg is not None:
        each = [
            f"{eye} {_words(value)}" for eye, value in (("right", right_deg), ("left", left_deg)) if value is not None
        ]
        parts.append(f"straight ahead {_words(ahead_deg)} ({', '.join(each)})")
    if down_deg is not None:
        parts.append(f"in down-gaze {_words(down_deg)}")
    said = ", ".join(parts)
    normal = f"from {PALSY_FROM_DEG:g} degrees of excyclotorsion in down-gaze a superior oblique palsy is likely"
    return f"{said[0].upper()}{said[1:]}; {normal}."


def _words(value_deg: float) -> str:
    if same(value_deg, 0):
        return "no torsion"
    return f"{abs(value_deg):g} degrees of {'excyclotorsion' if value_deg > 0 else 'incyclotorsion'}"
