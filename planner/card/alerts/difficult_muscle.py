"""A muscle of the plan that is likely to be hard to find, to hook or to pass a suture through."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.alerts.about import About
from planner.provenance import Mark, Provenance
from planner.records.diagnosis import Diagnosis
from planner.records.examination import Examination
from planner.records.motility import Pull
from planner.values.alert import Alert, AlertKind
from planner.values.option import Dose

SCARS = Provenance(
    mark=Mark.COMMON_PRACTICE, source="scars, tightness and stretched scars make a muscle hard to find and to hook"
)
TIGHT = (
    Diagnosis.THYROID_EYE_DISEASE,
    Diagnosis.CONGENITAL_FIBROSIS,
    Diagnosis.ORBITAL_FRACTURE,
    Diagnosis.DUANE_SYNDROME,
    Diagnosis.BROWN_SYNDROME,
)


def alerts(about: About) -> Iterator[Alert]:
    """One for each muscle with a reason."""
    for dose in about.doses:
        reasons = tuple(_reasons(about.examination, dose))
        if reasons:
            yield Alert(
                code=f"difficult-{dose.eye}-{dose.muscle.lower()}",
                kind=AlertKind.ALERT,
                topic="Expect difficulty",
                text=f"{dose.eye.upper()} eye, {dose.muscle.words}: {', '.join(reasons)}.",
                provenance=SCARS,
            )


def _reasons(examination: Examination, dose: Dose) -> Iterator[str]:
    if any((each.eye, each.muscle) == (dose.eye, dose.muscle) for each in examination.previous_operations):
        yield "operated before, expect scars and another place of insertion"
    if any(each.eye is dose.eye and each.result is Pull.RESTRICTED for each in examination.forced_ductions):
        yield "forced ductions of this eye were restricted in clinic"
    for each in examination.diagnoses:
        if each.diagnosis in TIGHT and each.eye in (None, dose.eye):
            yield f"{each.diagnosis}, expect tightness"
