"""A dose table of the clinic's own. It belongs to the clinic, not to a patient.

The first version's id stands where other records name their patient; a later version supersedes an earlier one and
keeps naming the first. Codes: ``table_id_differs``, and all that makes it no table (:mod:`planner.tables`).
"""

from __future__ import annotations

from clinic.people.role import Role
from clinic.sync.kinds.first_version import check_first_version
from clinic.sync.kinds.kind import Incoming, Kind, Owner
from clinic.sync.result import Rejected
from planner import tables
from planner.errors import Refused
from planner.records.dose_table import DoseTable


def check(incoming: Incoming[DoseTable]) -> None:
    """A first version names itself, a later one another; and its rows make a table."""
    check_first_version(incoming.entry, code="table_id_differs")
    try:
        tables.check_own(incoming.body)
    except Refused as refused:
        fault = refused.faults[0]
        raise Rejected(fault.code, fault.text, field=f"body.{fault.field}") from refused


KIND = Kind(
    name="dose_table",
    body=DoseTable,
    writers=frozenset({Role.SURGEON}),
    owner=Owner.CLINIC,
    check=check,
)
