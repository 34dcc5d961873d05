"""Allergies as they were entered; silence is never taken for none."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.alerts.about import About
from planner.card.alerts.entered import ASKED, ENTERED, kind_of
from planner.values.alert import Alert


def alerts(about: About) -> Iterator[Alert]:
    """One, whatever was entered."""
    said = about.patient.allergies
    yield Alert(
        code="allergies",
        kind=kind_of(said),
        topic="Allergies",
        text=said or "Not recorded: ask.",
        provenance=ENTERED if said else ASKED,
    )
