"""What the team must know before it begins: a module for each matter, with ``alerts(about)``.

``about`` is the :class:`~planner.card.alerts.about.About` of a plan and one version of its patient's record.
:func:`alerts` asks every module of the signed record and, where it is given, of the present one: what only the present
record says is marked as newer than the signature, and what it no longer says stays, with that said. Of the other
entries of a person who was entered twice it asks what a person's record alone can tell, and names the entry; an entry
never takes a warning away.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from planner.card.alerts import (
    allergies,
    anticoagulants,
    difficult_muscle,
    hyperthermia,
    latex,
    previous_operations,
    reflex,
    seeing_eye,
)
from planner.card.alerts.about import About
from planner.card.alerts.entered import ENTERED
from planner.records.patient import Patient
from planner.records.plan import Plan
from planner.values.alert import Alert, AlertKind

__all__ = ["alerts"]

MATTERS = (
    allergies,
    latex,
    anticoagulants,
    hyperthermia,
    seeing_eye,
    previous_operations,
    difficult_muscle,
    reflex,
)
"""In the order in which they are shown; what became known since the signature goes before them all."""

OF_A_PERSON = (allergies, latex, anticoagulants, hyperthermia)
"""Those of them that follow from a patient's record, whatever is planned."""


def alerts(
    patient: Patient, plan: Plan, patient_now: Patient | None = None, other_entries: tuple[Patient, ...] = ()
) -> tuple[Alert, ...]:
    """All that is to be known, what is newer than the signature first, then what stands under another entry."""
    signed = _of(patient, plan)
    now = signed if patient_now is None else _of(patient_now, plan)
    fresh = [replace(alert, newer=True) for alert in now if alert not in signed]
    gone = [_gone(alert) for alert in signed if _is_gone(alert, now)]
    told = {(alert.code, alert.text) for alert in now}
    other = [
        alert for place, each in enumerate(other_entries, start=1) for alert in _elsewhere(each, plan, place, told)
    ]
    return (*fresh, *gone, *other, *(alert for alert in signed if alert in now))


def _elsewhere(patient: Patient, plan: Plan, place: int, told: set[tuple[str, str]]) -> Iterator[Alert]:
    """What another entry warns of and this one does not say in the same words."""
    about = About(patient=patient, plan=plan)
    for alert in (alert for matter in OF_A_PERSON for alert in matter.alerts(about)):
        if alert.kind is AlertKind.ALERT and (alert.code, alert.text) not in told:
            named = f"{patient.full_name}, number {patient.hospital_number}"
            yield replace(alert, code=f"{alert.code}-entry-{place}", entry=named)


def _of(patient: Patient, plan: Plan) -> tuple[Alert, ...]:
    about = About(patient=patient, plan=plan)
    return tuple(alert for matter in MATTERS for alert in matter.alerts(about))


def _is_gone(alert: Alert, now: tuple[Alert, ...]) -> bool:
    """What was entered is gone when its words are; a sentence of ours stays while the present record warns of it."""
    if alert.kind is not AlertKind.ALERT or alert in now:
        return False
    warned = {each.code for each in now if each.kind is AlertKind.ALERT}
    return alert.provenance == ENTERED or alert.code not in warned


def _gone(alert: Alert) -> Alert:
    text = f"In the record that was signed, no longer in the present one: {alert.text}"
    return replace(alert, code=f"{alert.code}-gone", text=text, newer=True)
