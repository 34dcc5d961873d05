"""What thins the blood."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.alerts.about import About
from planner.card.alerts.entered import ASKED, ENTERED
from planner.values.alert import Alert, AlertKind


def alerts(about: About) -> Iterator[Alert]:
    """One, whatever was entered."""
    said = about.patient.anticoagulants
    yield Alert(
        code="anticoagulants",
        kind=AlertKind.ALERT if said else AlertKind.ASK,
        topic="Anticoagulants",
        text=said or "Not recorded: ask.",
        provenance=ENTERED if said else ASKED,
    )
