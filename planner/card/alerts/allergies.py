"""Allergies as they were entered; silence is never taken for none."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.alerts.about import About
from planner.card.alerts.entered import ASKED, ENTERED, kind_of, says_nothing
from planner.records.patient import Known
from planner.values.alert import Alert


def alerts(about: About) -> Iterator[Alert]:
    """One, whatever was entered; none where "none" was entered beside latex that is not borne, which is said itself."""
    said = about.patient.allergies
    if about.patient.latex is Known.YES and says_nothing(said):
        return
    yield Alert(
        code="allergies",
        kind=kind_of(said),
        topic="Allergies",
        text=said or "Not recorded: ask.",
        provenance=ENTERED if said else ASKED,
    )
