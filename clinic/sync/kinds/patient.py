"""Who the patient is.

The first version's id names the patient in every record, its own included; a later version supersedes an earlier one
and keeps naming the first. Codes: ``patient_id_differs``.
"""

from __future__ import annotations

from clinic.people.role import Role
from clinic.sync.kinds.first_version import check_first_version
from clinic.sync.kinds.kind import Incoming, Kind, Theatre
from planner.records.patient import Patient


def check(incoming: Incoming[Patient]) -> None:
    """A first version names itself, a later one another."""
    check_first_version(incoming.entry, code="patient_id_differs")


KIND = Kind(
    name="patient",
    body=Patient,
    writers=frozenset({Role.SURGEON, Role.CLINIC, Role.COORDINATOR}),
    theatre=Theatre.OF_CARDS,
    check=check,
)
