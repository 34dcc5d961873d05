"""Who the patient is.

The first version's id names the patient in every record, its own included; a later version supersedes an earlier one
and keeps naming the first. Codes: ``patient_id_differs``.
"""

from __future__ import annotations

from clinic.people.role import Role
from clinic.sync.kinds.kind import Incoming, Kind
from clinic.sync.result import Rejected
from planner.records.patient import Patient


def check(incoming: Incoming[Patient]) -> None:
    """A first version names itself, a later one another."""
    entry = incoming.entry
    is_first = not entry.supersedes
    if is_first != (entry.patient == entry.id):
        text = "A first version carries its own id as patient; a later one supersedes and carries the first one's."
        raise Rejected("patient_id_differs", text, field="patient")


KIND = Kind(
    name="patient",
    body=Patient,
    writers=frozenset({Role.SURGEON, Role.CLINIC, Role.COORDINATOR}),
    check=check,
)
