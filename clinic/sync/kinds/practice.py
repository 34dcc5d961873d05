"""How the clinic does things in theatre where it differs from common practice. It belongs to the clinic.

The first version's id stands where other records name their patient. Codes: ``practice_id_differs``, and those of
:func:`planner.setup.check_practice`.
"""

from __future__ import annotations

from clinic.people.role import Role
from clinic.sync.kinds.first_version import check_first_version
from clinic.sync.kinds.kind import Incoming, Kind, Owner, Theatre
from clinic.sync.result import Rejected
from planner import setup
from planner.errors import Refused
from planner.records.practice import Practice


def check(incoming: Incoming[Practice]) -> None:
    """A first version names itself, a later one another; and nothing is made usual that is refused to everybody."""
    check_first_version(incoming.entry, code="practice_id_differs")
    try:
        setup.check_practice(incoming.body)
    except Refused as refused:
        fault = refused.faults[0]
        raise Rejected(fault.code, fault.text, field=f"body.{fault.field}") from refused


KIND = Kind(
    name="practice",
    body=Practice,
    writers=frozenset({Role.SURGEON}),
    owner=Owner.CLINIC,
    theatre=Theatre.ALL,
    check=check,
)
