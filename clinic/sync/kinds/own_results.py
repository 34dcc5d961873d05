"""Where a surgeon wants to see the own results beside the table's dose. It belongs to the clinic, and to that surgeon.

The first version's id stands where other records name their patient. Codes: ``own_results_id_differs``,
``surgeon_differs``, ``other_surgeon``.
"""

from __future__ import annotations

from clinic.people.role import Role
from clinic.sync.kinds.first_version import check_first_version
from clinic.sync.kinds.kind import Incoming, Kind, Owner
from clinic.sync.known import Known
from clinic.sync.result import Rejected
from planner.records.own_results import OwnResults


def check(incoming: Incoming[OwnResults]) -> None:
    """A first version names itself, a later one another; and nobody switches for somebody else."""
    check_first_version(incoming.entry, code="own_results_id_differs")
    if incoming.body.surgeon_name != incoming.sender.full_name:
        text = "The name in the record is not the name of the account."
        raise Rejected("surgeon_differs", text, field="body.surgeon_name")


def fit(incoming: Incoming[OwnResults], known: Known) -> None:
    """What it supersedes is the same surgeon's."""
    for superseded in incoming.entry.supersedes:
        if known.records[superseded].read(OwnResults).surgeon_name != incoming.body.surgeon_name:
            raise Rejected("other_surgeon", "A correction is of the same surgeon's choice.", field="supersedes")


KIND = Kind(
    name="own_results",
    body=OwnResults,
    writers=frozenset({Role.SURGEON}),
    owner=Owner.CLINIC,
    check=check,
    fit=fit,
)
