"""A record taken back, with a reason. Who may write a record may take one back; a retraction stays.

Codes: ``supersedes_not_allowed``, ``retraction_of_retraction``, ``record_stays``, ``role_may_not``.
"""

from __future__ import annotations

from uuid import UUID

from clinic.people.role import Role
from clinic.sync.kinds import (
    adjustment,
    check_item,
    dose_table,
    examination,
    follow_up,
    join,
    notebook,
    operating_list,
    operation,
    patient,
    plan,
    practice,
    set_up,
    signature,
)
from clinic.sync.kinds.kind import Incoming, Kind, Theatre
from clinic.sync.known import Known
from clinic.sync.result import Rejected
from planner.records.retraction import Retraction

WRITERS = {
    module.KIND.name: module.KIND.writers
    for module in (
        patient,
        examination,
        plan,
        signature,
        dose_table,
        join,
        check_item,
        practice,
        set_up,
        operating_list,
        operation,
        adjustment,
        follow_up,
        notebook,
    )
}


def about(body: Retraction) -> UUID:
    """The record that is taken back."""
    return UUID(body.record_id)


def check(incoming: Incoming[Retraction]) -> None:
    """It takes back; it replaces nothing."""
    if incoming.entry.supersedes:
        raise Rejected("supersedes_not_allowed", "A retraction supersedes nothing.", field="supersedes")


def fit(incoming: Incoming[Retraction], known: Known) -> None:
    """The target is a known record of this patient, or a table of the clinic, and one that this role may write."""
    target = known.records.get(about(incoming.body))
    kind = target.kind if target else ""
    known.find(about(incoming.body), kind=kind, patient=incoming.entry.patient, where="body.record_id")
    if kind == "theatre_check":
        text = "A check in theatre stays, a stopped one above all. A new check follows it."
        raise Rejected("record_stays", text, field="body.record_id")
    if kind not in WRITERS:
        raise Rejected("retraction_of_retraction", "A retraction stays.", field="body.record_id")
    if incoming.sender.role not in WRITERS[kind]:
        raise Rejected("role_may_not", f"This role may not take back a {kind}.", field="body.record_id")


KIND = Kind(
    name="retraction",
    body=Retraction,
    writers=frozenset({Role.SURGEON, Role.CLINIC, Role.COORDINATOR}),
    theatre=Theatre.OF_CARDS,
    about=about,
    references=lambda body: (about(body),),
    check=check,
    fit=fit,
)
