"""A surgeon's cases from before this app. They belong to the clinic, not to a patient: none is named in them.

Only the surgeon whose cases they are carries them over, and the engine judges the rows again as the dry run did.
Codes: ``notebook_id_differs``, ``surgeon_differs``, and those of :mod:`planner.exchange.notebook.judging`.
"""

from __future__ import annotations

from clinic.people.role import Role
from clinic.sync.kinds.first_version import check_first_version
from clinic.sync.kinds.kind import Incoming, Kind, Owner
from clinic.sync.result import Rejected
from planner.exchange.notebook import hindrances
from planner.records.notebook import Notebook


def check(incoming: Incoming[Notebook]) -> None:
    """One's own cases, each of which the named table can dose."""
    check_first_version(incoming.entry, code="notebook_id_differs")
    if incoming.body.surgeon_name != incoming.sender.full_name:
        text = "The notebook's surgeon is not the person of the account."
        raise Rejected("surgeon_differs", text, field="body.surgeon_name")
    for fault in hindrances(incoming.body):
        raise Rejected(fault.code, fault.text, field=f"body.{fault.field}")


KIND = Kind(
    name="notebook",
    body=Notebook,
    writers=frozenset({Role.SURGEON}),
    owner=Owner.CLINIC,
    check=check,
)
