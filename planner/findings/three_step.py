"""The three-step test in this patient, with what breaks it here."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from planner.anatomy import Muscle
from planner.findings.finding import finding
from planner.measurement import Figure, Measurements
from planner.palsy.steps import Step
from planner.palsy.three_step import ThreeStep, Verticals, three_step
from planner.precision.strength import sign_strength
from planner.records.diagnosis import Breaker, Diagnosis, Presence
from planner.records.examination import Correction, Examination, Gaze, Range
from planner.records.motility import Pull
from planner.values.statement import Finding, Statement, Strength

VERTICAL_MUSCLES = frozenset(Muscle) - {Muscle.MR, Muscle.LR}
BREAKING = {
    Diagnosis.MYASTHENIA: Breaker.MYASTHENIA,
    Diagnosis.SKEW_DEVIATION: Breaker.SKEW,
    Diagnosis.THIRD_NERVE_PALSY: Breaker.SEVERAL_MUSCLES,
    Diagnosis.PROGRESSIVE_EXTERNAL_OPHTHALMOPLEGIA: Breaker.SEVERAL_MUSCLES,
    Diagnosis.THYROID_EYE_DISEASE: Breaker.RESTRICTION,
    Diagnosis.ORBITAL_FRACTURE: Breaker.RESTRICTION,
    Diagnosis.BROWN_SYNDROME: Breaker.RESTRICTION,
    Diagnosis.CONGENITAL_FIBROSIS: Breaker.RESTRICTION,
}
"""What a diagnosis says about the conditions of the test."""


@dataclass(frozen=True, kw_only=True)
class Palsy:
    """``test`` is None where there is no vertical deviation to ask about."""

    test: ThreeStep | None
    statements: tuple[Finding, ...]


def find(measurements: Measurements, correction: Correction) -> Palsy:
    """The test, where a vertical deviation stands beyond chance straight ahead or was looked for in the steps."""
    verticals = {
        gaze: measurements.vertical(gaze, Range.DISTANCE, correction)
        for gaze in (Gaze.PRIMARY, Gaze.RIGHT, Gaze.LEFT, Gaze.TILT_RIGHT, Gaze.TILT_LEFT)
    }
    if not _is_asked(verticals):
        return Palsy(test=None, statements=())
    test = three_step(
        Verticals(
            primary_pd=_value(verticals[Gaze.PRIMARY]),
            right_pd=_value(verticals[Gaze.RIGHT]),
            left_pd=_value(verticals[Gaze.LEFT]),
            tilt_right_pd=_value(verticals[Gaze.TILT_RIGHT]),
            tilt_left_pd=_value(verticals[Gaze.TILT_LEFT]),
        ),
        presence(measurements.examination),
    )
    return Palsy(test=test, statements=tuple(_statements(test)))


def presence(examination: Examination) -> dict[Breaker, Presence]:
    """What the examination says of the conditions of the test: what it shows counts before what was ticked."""
    known = {each.breaker: each.presence for each in examination.conditions}
    return known | dict.fromkeys(_shown(examination), Presence.PRESENT)


def _shown(examination: Examination) -> Iterator[Breaker]:
    if examination.dvd_right_pd or examination.dvd_left_pd:
        yield Breaker.DISSOCIATED
    if any(each.muscle in VERTICAL_MUSCLES for each in examination.previous_operations):
        yield Breaker.PREVIOUS_SURGERY
    if any(each.result is Pull.RESTRICTED and each.muscle in VERTICAL_MUSCLES for each in examination.forced_ductions):
        yield Breaker.RESTRICTION
    for each in examination.diagnoses:
        if each.diagnosis in BREAKING:
            yield BREAKING[each.diagnosis]


def _is_asked(verticals: dict[Gaze, Figure | None]) -> bool:
    ahead = verticals[Gaze.PRIMARY]
    if ahead is None or ahead.value_pd == 0:
        return False
    told = sign_strength(ahead.value_pd, ahead.limits.half_width_pd) is not Strength.CANNOT_TELL
    return told or any(figure is not None for gaze, figure in verticals.items() if gaze is not Gaze.PRIMARY)


def _value(figure: Figure | None) -> float | None:
    return figure.value_pd if figure else None


def _statements(test: ThreeStep) -> Iterator[Finding]:
    said = test.statement
    facts = dict(said.facts)
    for name, step in (("hyper", test.hyper), ("gaze", test.gaze), ("tilt", test.tilt)):
        facts |= _facts(name, step)
    exclude = ", ".join(breaker.value for breaker in test.to_exclude)
    settle = [*test.settle, *([f"Exclude: {exclude}."] if exclude else [])]
    yield finding(
        Statement(code=said.code, text=said.text, provenance=said.provenance, facts=facts),
        test.strength,
        "" if test.broken_by else " ".join(settle),
    )
    for notice in test.notices:
        yield finding(notice, Strength.CLEAR)


def _facts(name: str, step: Step) -> dict[str, str | float]:
    facts: dict[str, str | float] = {
        name: step.side.value if step.side else "",
        f"{name}_strength": step.strength.value,
    }
    if step.difference_pd is not None and step.limits_pd is not None:
        facts |= {f"{name}_pd": step.difference_pd, f"{name}_limits_pd": step.limits_pd}
    return facts
