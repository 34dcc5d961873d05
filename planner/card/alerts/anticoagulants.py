"""What thins the blood."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.alerts.about import About
from planner.card.alerts.entered import ASKED, ENTERED, kind_of
from planner.values.alert import Alert


def alerts(about: About) -> Iterator[Alert]:
    """One, whatever was entered."""
    said = about.patient.anticoagulants
    yield Alert(
        code="anticoagulants",
        kind=kind_of(said),
        topic="Anticoagulants",
        text=said or "Not recorded: ask.",
        provenance=ENTERED if said else ASKED,
    )
