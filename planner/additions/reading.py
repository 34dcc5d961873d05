"""Where a measured figure comes from."""

from __future__ import annotations

from planner.provenance import Mark, Provenance

READING = Provenance(mark=Mark.MEASURED, source="measured in this examination")
