"""A check in theatre, passed or stopped.

The outcome is never taken on trust: the engine goes through what was entered again, against the plan, the signature and
the patient of the ledger. A card that was replaced while theatre was without a network does not turn a check away: that
it was made is a fact, and the ledger shows which came first. Codes: ``supersedes_not_allowed``, ``card_differs``,
``after_differs``, ``local_item_differs``, and those of :mod:`planner.checks`.
"""

from __future__ import annotations

from uuid import UUID

from clinic.people.role import Role
from clinic.sync.kinds.kind import Incoming, Kind, Theatre
from clinic.sync.known import Known
from clinic.sync.result import Rejected
from planner import checks
from planner.errors import Refused
from planner.records.check_item import CheckItem
from planner.records.patient import Patient
from planner.records.plan import Plan, Signature
from planner.records.theatre_check import LocalAsked, Outcome, TheatreCheck


def about(body: TheatreCheck) -> UUID:
    """The signature whose card was checked."""
    return UUID(body.signature_id)


def references(body: TheatreCheck) -> tuple[UUID, ...]:
    """The card's pieces, the check before, and the clinic's own items."""
    named = [body.signature_id, body.plan_id, body.patient_id, *body.also, *(asked.record_id for asked in body.local)]
    return tuple(map(UUID, [*named, body.after] if body.after else named))


def check(incoming: Incoming[TheatreCheck]) -> None:
    """A check replaces none; a new one stands beside it."""
    if incoming.entry.supersedes:
        text = "A check in theatre supersedes nothing; a new one stands beside it."
        raise Rejected("supersedes_not_allowed", text, field="supersedes")


def fit(incoming: Incoming[TheatreCheck], known: Known) -> None:
    """The card is one of this patient, and the outcome follows from what was entered."""
    body, who = incoming.body, incoming.entry.patient
    signature = known.find(body.signature_id, kind="signature", patient=who, where="body.signature_id")
    plan = known.find(body.plan_id, kind="plan", patient=who, where="body.plan_id")
    patient = known.find(body.patient_id, kind="patient", patient=who, where="body.patient_id")
    signed, planned = signature.read(Signature), plan.read(Plan)
    if (signed.plan_id, planned.patient_id) != (body.plan_id, body.patient_id):
        raise Rejected("card_differs", "The card was not made of these records.", field="body.plan_id")
    _fit_after(body, who, known)
    for place, asked in enumerate(body.local):
        _fit_local(asked, known, where=f"body.local.{place}")
    also = tuple(_other(record_id, known, where=f"body.also.{place}") for place, record_id in enumerate(body.also))
    named = checks.Named(
        patient=patient.read(Patient), plan=planned, plan_digest=plan.digest, signature=signed, also=also
    )
    try:
        checks.verify(body, named)
    except Refused as refused:
        fault = refused.faults[0]
        raise Rejected(fault.code, fault.text, field=f"body.{fault.field}") from refused


def _fit_after(body: TheatreCheck, who: UUID, known: Known) -> None:
    if body.after is None:
        return
    before = known.find(body.after, kind="theatre_check", patient=who, where="body.after").read(TheatreCheck)
    expected = (checks.BEFORE.get(body.phase), Outcome.PASSED, body.signature_id)
    if (before.phase, before.outcome, before.signature_id) != expected:
        text = "The check before this one was of another phase or card, or did not pass."
        raise Rejected("after_differs", text, field="body.after")


def _other(record_id: str, known: Known, *, where: str) -> Patient:
    """What a newer record says, or one of another entry of the person: whose it is, a join says and no check."""
    named = known.require(UUID(record_id), where=where)
    return known.find(record_id, kind="patient", patient=named.patient, where=where).read(Patient)


def _fit_local(asked: LocalAsked, known: Known, *, where: str) -> None:
    named = known.records.get(UUID(asked.record_id))
    owner = named.patient if named else UUID(asked.record_id)
    item = known.find(asked.record_id, kind="check_item", patient=owner, where=f"{where}.record_id")
    if item.read(CheckItem) != asked.item:
        raise Rejected("local_item_differs", "The clinic's own item says something else.", field=f"{where}.item")


KIND = Kind(
    name="theatre_check",
    body=TheatreCheck,
    writers=frozenset({Role.SURGEON, Role.CLINIC, Role.THEATRE}),
    theatre=Theatre.OF_CARDS,
    about=about,
    references=references,
    check=check,
    fit=fit,
)
