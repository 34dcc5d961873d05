"""Latex: said where it is not borne, asked where nobody knows."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.alerts.about import About
from planner.card.alerts.entered import ASKED
from planner.provenance import Mark, Provenance
from planner.records.patient import Known
from planner.values.alert import Alert, AlertKind

FREE = Provenance(mark=Mark.COMMON_PRACTICE, source="latex-free set-up and gloves, first on the list")
SAFE = Provenance(mark=Mark.HOUSE_RULE, source="whatever the allergies say of latex, a set-up without it harms nobody")
NAMED = {
    Known.UNKNOWN: "Named among the allergies: latex-free gloves and set-up until it is asked.",
    Known.NO: "Named among the allergies, and entered as borne: latex-free gloves and set-up until it is asked.",
}


def alerts(about: About) -> Iterator[Alert]:
    """None where it is borne and nobody wrote otherwise."""
    known = about.patient.latex
    if known is Known.YES:
        yield _warning("Not borne: latex-free gloves and set-up.", FREE)
    elif "latex" in about.patient.allergies.casefold():
        yield _warning(NAMED[known], SAFE)
    elif known is Known.UNKNOWN:
        yield Alert(code="latex", kind=AlertKind.ASK, topic="Latex", text="Not recorded: ask.", provenance=ASKED)


def _warning(text: str, provenance: Provenance) -> Alert:
    return Alert(code="latex", kind=AlertKind.ALERT, topic="LATEX", text=text, provenance=provenance)
