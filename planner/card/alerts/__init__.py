"""What the team must know before it begins: a module for each matter, with ``alerts(about)``.

``about`` is the :class:`~planner.card.alerts.about.About` of a plan and one version of its patient's record.
:func:`alerts` asks every module of the signed record and, where it is given, of the present one: what only the present
record says is marked as newer than the signature, and what it no longer says stays, with that said.
"""

from __future__ import annotations

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


def alerts(patient: Patient, plan: Plan, patient_now: Patient | None = None) -> tuple[Alert, ...]:
    """All that is to be known, what is newer than the signature first."""
    signed = _of(patient, plan)
    now = signed if patient_now is None else _of(patient_now, plan)
    fresh = [replace(alert, newer=True) for alert in now if alert not in signed]
    gone = [_gone(alert) for alert in signed if alert not in now and alert.kind is AlertKind.ALERT]
    return (*fresh, *gone, *(alert for alert in signed if alert in now))


def _of(patient: Patient, plan: Plan) -> tuple[Alert, ...]:
    about = About(patient=patient, plan=plan)
    return tuple(alert for matter in MATTERS for alert in matter.alerts(about))


def _gone(alert: Alert) -> Alert:
    text = f"In the record that was signed, no longer in the present one: {alert.text}"
    return replace(alert, code=f"{alert.code}-gone", text=text, newer=True)
