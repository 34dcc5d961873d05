"""A question that the clinic adds to the checks in theatre. It belongs to the clinic; a retraction ends it.

The first version's id stands where other records name their patient. Codes: ``item_id_differs``.
"""

from __future__ import annotations

from clinic.people.role import Role
from clinic.sync.kinds.first_version import check_first_version
from clinic.sync.kinds.kind import Incoming, Kind, Owner, Theatre
from planner.records.check_item import CheckItem


def check(incoming: Incoming[CheckItem]) -> None:
    """A first version names itself, a later one another."""
    check_first_version(incoming.entry, code="item_id_differs")


KIND = Kind(
    name="check_item",
    body=CheckItem,
    writers=frozenset({Role.SURGEON}),
    owner=Owner.CLINIC,
    theatre=Theatre.ALL,
    check=check,
)
