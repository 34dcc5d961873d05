"""A team's list of one day. It belongs to the clinic, and theatre has it always.

A list names patients and plans that the clinic knows; whether a plan still stands, or is signed, changes after the
list was written and is shown on it, never refused. Codes: ``list_id_differs``.
"""

from __future__ import annotations

from uuid import UUID

from clinic.people.role import Role
from clinic.sync.kinds.first_version import check_first_version
from clinic.sync.kinds.kind import Incoming, Kind, Owner, Theatre
from clinic.sync.known import Known
from planner.records.operating_list import OperatingList


def references(body: OperatingList) -> tuple[UUID, ...]:
    """Every patient and every plan."""
    return tuple(UUID(each) for entry in body.entries for each in (entry.patient_id, entry.plan_id))


def check(incoming: Incoming[OperatingList]) -> None:
    """A first version names itself, a later one another."""
    check_first_version(incoming.entry, code="list_id_differs")


def fit(incoming: Incoming[OperatingList], known: Known) -> None:
    """Each plan is that patient's."""
    for number, entry in enumerate(incoming.body.entries):
        patient = UUID(entry.patient_id)
        known.find(patient, kind="patient", patient=patient, where=f"body.entries.{number}.patient_id")
        known.find(entry.plan_id, kind="plan", patient=patient, where=f"body.entries.{number}.plan_id")


KIND = Kind(
    name="operating_list",
    body=OperatingList,
    writers=frozenset({Role.SURGEON, Role.COORDINATOR}),
    owner=Owner.CLINIC,
    theatre=Theatre.ALL,
    references=references,
    check=check,
    fit=fit,
)
