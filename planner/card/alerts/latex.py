"""Latex: said where it is not borne, asked where nobody knows."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.alerts.about import About
from planner.card.alerts.entered import ASKED
from planner.provenance import Mark, Provenance
from planner.records.patient import Known
from planner.values.alert import Alert, AlertKind

FREE = Provenance(mark=Mark.COMMON_PRACTICE, source="latex-free set-up and gloves, first on the list")


def alerts(about: About) -> Iterator[Alert]:
    """None where it is borne."""
    if about.patient.latex is Known.YES:
        text = "Not borne: latex-free gloves and set-up."
        yield Alert(code="latex", kind=AlertKind.ALERT, topic="LATEX", text=text, provenance=FREE)
    elif about.patient.latex is Known.UNKNOWN:
        yield Alert(code="latex", kind=AlertKind.ASK, topic="Latex", text="Not recorded: ask.", provenance=ASKED)
