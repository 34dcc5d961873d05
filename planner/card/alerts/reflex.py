"""The heart slows when a muscle is pulled."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.alerts.about import About
from planner.provenance import Mark, Provenance
from planner.values.alert import Alert, AlertKind

OFTEN = Provenance(mark=Mark.PUBLISHED, source="seen in 30 to 85 % of operations, by its definition; several series")


def alerts(about: About) -> Iterator[Alert]:  # noqa: ARG001 -- every matter is asked alike
    """On every card."""
    yield Alert(
        code="oculocardiac_reflex",
        kind=AlertKind.TELL,
        topic="Oculocardiac reflex",
        text="Tell the anaesthetist before each traction on a muscle; let go when the heart slows.",
        provenance=OFTEN,
    )
