"""Two patients joined, since they are one person who was entered twice. A retraction of the join parts them again.

The envelope's patient is ``patient_a``. Codes: ``supersedes_not_allowed``, ``patient_differs``, ``joined_to_itself``.
"""

from __future__ import annotations

from uuid import UUID

from clinic.people.role import Role
from clinic.sync.kinds.kind import Incoming, Kind, Theatre
from clinic.sync.known import Known
from clinic.sync.result import Rejected
from planner.records.join import Join


def about(body: Join) -> UUID:
    """The patient who is joined to another."""
    return UUID(body.patient_b)


def check(incoming: Incoming[Join]) -> None:
    """Of two patients, the first of whom the envelope names."""
    entry, body = incoming.entry, incoming.body
    if entry.supersedes:
        raise Rejected("supersedes_not_allowed", "A join supersedes nothing; take it back instead.", field="supersedes")
    if UUID(body.patient_a) != entry.patient:
        raise Rejected("patient_differs", "A join stands with its first patient.", field="patient")
    if body.patient_a == body.patient_b:
        raise Rejected("joined_to_itself", "A patient cannot be joined to itself.", field="body.patient_b")


def fit(incoming: Incoming[Join], known: Known) -> None:
    """The second is a patient of the clinic, named by the first version; the first is looked for with every record."""
    known.find(about(incoming.body), kind="patient", patient=about(incoming.body), where="body.patient_b")


KIND = Kind(
    name="join",
    body=Join,
    writers=frozenset({Role.SURGEON, Role.CLINIC, Role.COORDINATOR}),
    theatre=Theatre.OF_CARDS,
    about=about,
    references=lambda body: (about(body),),
    check=check,
    fit=fit,
)
