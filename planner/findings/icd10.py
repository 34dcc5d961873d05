"""WHO ICD-10 codes that the findings suggest, for whoever codes to confirm. They carry no side and no pattern."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from planner.anatomy import Muscle
from planner.direction import direction_of
from planner.findings.comitance import Comitance
from planner.findings.ductions import Cause, Ductions
from planner.findings.three_step import Palsy
from planner.precision.limits import Direction, limits_of
from planner.precision.strength import sign_strength, weakest
from planner.provenance import Mark, Provenance
from planner.records.diagnosis import Diagnosis
from planner.records.examination import Constancy, Examination
from planner.thresholds import same
from planner.values.proposal import Target
from planner.values.statement import Finding, Strength

WHO = Provenance(
    mark=Mark.PUBLISHED, source="WHO ICD-10, H49 to H51; a suggestion to be confirmed, without side or pattern"
)
IN_USE = Provenance(
    mark=Mark.COMMON_PRACTICE, source="WHO ICD-10, H49 to H51, as it is used; the list does not name this disease"
)

TITLES = {
    "H49.0": "third nerve palsy",
    "H49.1": "fourth nerve palsy",
    "H49.2": "sixth nerve palsy",
    "H49.4": "progressive external ophthalmoplegia",
    "H50.0": "convergent concomitant strabismus",
    "H50.1": "divergent concomitant strabismus",
    "H50.2": "vertical strabismus",
    "H50.3": "intermittent heterotropia",
    "H50.4": "other and unspecified heterotropia",
    "H50.5": "heterophoria",
    "H50.6": "mechanical strabismus",
    "H50.8": "other specified strabismus",
    "H51.1": "convergence insufficiency and excess",
    "H51.2": "internuclear ophthalmoplegia",
    "H51.8": "other specified disorders of binocular movement",
}
NAMED = {
    Diagnosis.THIRD_NERVE_PALSY: "H49.0",
    Diagnosis.FOURTH_NERVE_PALSY: "H49.1",
    Diagnosis.SIXTH_NERVE_PALSY: "H49.2",
    Diagnosis.PROGRESSIVE_EXTERNAL_OPHTHALMOPLEGIA: "H49.4",
    Diagnosis.BROWN_SYNDROME: "H50.6",
    Diagnosis.DUANE_SYNDROME: "H50.8",
    Diagnosis.CONVERGENCE_INSUFFICIENCY: "H51.1",
    Diagnosis.INTERNUCLEAR_OPHTHALMOPLEGIA: "H51.2",
}
"""Diseases that the classification names."""
MECHANICAL = frozenset({Diagnosis.THYROID_EYE_DISEASE, Diagnosis.ORBITAL_FRACTURE, Diagnosis.CONGENITAL_FIBROSIS})
"""Diseases of the orbit or of the muscles that hold the eye back; their own code stands in other chapters."""
UNLIKE_CONCOMITANT = frozenset(NAMED) - {Diagnosis.CONVERGENCE_INSUFFICIENCY} | MECHANICAL | {Diagnosis.MYASTHENIA}

AGAIN = "Measure the deviation again."
HOW_OFTEN = "Record whether the deviation is constant, intermittent or latent."
DUCTIONS_NEXT = "Test ductions: a palsy and a restriction are coded apart."


@dataclass(frozen=True, kw_only=True)
class Suggested:
    """A code, why, how firmly and what would settle it."""

    code: str
    why: str
    provenance: Provenance = WHO
    strength: Strength = Strength.CLEAR
    settle: str = ""


def find(
    examination: Examination, target: Target, comitance: Comitance, palsy: Palsy, ductions: Ductions
) -> Iterator[Finding]:
    """The codes, those of a diagnosis first; each once, as firmly as it is suggested at all."""
    found: dict[str, Suggested] = {}
    for each in (
        *_of_diagnoses(examination),
        *_of_movement(palsy, ductions),
        *_of_horizontal(examination, target, comitance),
        *_of_vertical(examination, target),
    ):
        found.setdefault(each.code, each)
    for each in found.values():
        yield Finding(
            code="icd10",
            text=f"ICD-10 {each.code} ({TITLES[each.code]}): {each.why}.",
            provenance=each.provenance,
            facts={"icd10": each.code, "title": TITLES[each.code]},
            strength=each.strength,
            settle=each.settle,
        )


def _of_diagnoses(examination: Examination) -> Iterator[Suggested]:
    for each in examination.diagnoses:
        if each.diagnosis in NAMED:
            yield Suggested(code=NAMED[each.diagnosis], why=f"diagnosed, {each.diagnosis}")
        elif each.diagnosis in MECHANICAL:
            why = f"{each.diagnosis} holds the eye back; the disease itself is coded elsewhere"
            yield Suggested(code="H50.6", why=why, provenance=IN_USE)


def _of_movement(palsy: Palsy, ductions: Ductions) -> Iterator[Suggested]:
    weak = palsy.test.weak if palsy.test else None
    if palsy.test and weak and weak.muscle is Muscle.SO:
        strength = Strength.BORDERLINE if palsy.test.strength is Strength.CLEAR else palsy.test.strength
        settle = " ".join(palsy.test.settle)
        yield Suggested(
            code="H49.1", why=f"the three steps point to the {weak.words}", strength=strength, settle=settle
        )
    for limited in ductions.limited:
        if limited.cause is Cause.RESTRICTION:
            why = f"the {limited.eye} eye is held back in the field of the {limited.muscle.words}"
            yield Suggested(code="H50.6", why=why, strength=Strength.BORDERLINE)
        elif limited.cause is Cause.PALSY and limited.muscle is Muscle.LR:
            why = f"the {limited.eye} {limited.muscle.words} is weak"
            yield Suggested(code="H49.2", why=why, strength=Strength.BORDERLINE)


_BY_CONSTANCY = {Constancy.INTERMITTENT: "H50.3", Constancy.LATENT: "H50.5"}


def _of_horizontal(examination: Examination, target: Target, comitance: Comitance) -> Iterator[Suggested]:
    if same(target.horizontal_pd, 0):
        return
    direction = direction_of(target.horizontal_pd)
    constancy = examination.constancy
    if constancy in _BY_CONSTANCY:
        yield Suggested(code=_BY_CONSTANCY[constancy], why=f"{constancy} {direction.words}")
        return
    if any(each.diagnosis in UNLIKE_CONCOMITANT for each in examination.diagnoses):
        return
    if comitance.comitant is False:
        why = f"{direction.words} that differs in side gaze"
        yield Suggested(code="H50.4", why=why, strength=Strength.CANNOT_TELL, settle=DUCTIONS_NEXT)
        return
    strength = sign_strength(target.horizontal_pd, target.limits_pd)
    known = constancy is Constancy.CONSTANT
    yield Suggested(
        code="H50.0" if direction.sign > 0 else "H50.1",
        why=direction.words if known else f"{direction.words}, if it is constant",
        strength=strength if known else weakest(strength, Strength.BORDERLINE),
        settle=HOW_OFTEN if not known else "" if strength is Strength.CLEAR else AGAIN,
    )


def _of_vertical(examination: Examination, target: Target) -> Iterator[Suggested]:
    if examination.dvd_right_pd or examination.dvd_left_pd:
        yield Suggested(code="H51.8", why="dissociated vertical deviation", provenance=IN_USE)
    if target.vertical_pd is None or same(target.vertical_pd, 0):
        return
    if any(each.diagnosis in UNLIKE_CONCOMITANT for each in examination.diagnoses):
        return
    limits = limits_of(
        target.vertical_pd, target.reading.range, method=target.reading.method, direction=Direction.VERTICAL
    )
    strength = sign_strength(target.vertical_pd, limits.half_width_pd)
    if strength is not Strength.CANNOT_TELL:
        side = "right" if target.vertical_pd > 0 else "left"
        settle = "" if strength is Strength.CLEAR else AGAIN
        yield Suggested(code="H50.2", why=f"{side} hyper", strength=strength, settle=settle)
