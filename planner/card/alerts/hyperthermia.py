"""Malignant hyperthermia in the family."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.alerts.about import About
from planner.provenance import Mark, Provenance
from planner.records.patient import Known
from planner.values.alert import Alert, AlertKind

WEAK = Provenance(mark=Mark.FROM_MEMORY, source="weakly associated with strabismus: the family history is asked")
TOPIC = "Malignant hyperthermia"


def alerts(about: About) -> Iterator[Alert]:
    """None where the family has none."""
    known = about.patient.malignant_hyperthermia_family
    if known is Known.YES:
        text = "In the family: the anaesthetist must know before the list is made."
        yield Alert(code="hyperthermia", kind=AlertKind.ALERT, topic=TOPIC.upper(), text=text, provenance=WEAK)
    elif known is Known.UNKNOWN:
        text = "Family history not recorded: ask."
        yield Alert(code="hyperthermia", kind=AlertKind.ASK, topic=TOPIC, text=text, provenance=WEAK)
