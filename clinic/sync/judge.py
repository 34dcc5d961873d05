"""Whether a pushed record may enter: what it says of itself, then, under the feed's lock, how it fits the ledger."""

from __future__ import annotations

import hashlib
from typing import Any
from uuid import UUID

from clinic.ledger.commands import Entry
from clinic.ledger.heads import RETRACTION
from clinic.sync.envelope import Envelope
from clinic.sync.kinds import KINDS
from clinic.sync.kinds.kind import Incoming, Kind, Owner
from clinic.sync.known import Known
from clinic.sync.result import Rejected
from clinic.sync.sender import Sender
from planner.canonical import canonical
from planner.codec import read_body
from planner.errors import Refused


def examine(clinic: UUID, sender: Sender, envelope: Envelope, body: object) -> Incoming[Any]:
    """The record, found good by itself; Rejected otherwise. Nothing is asked of the database."""
    kind = _kind(envelope)
    if envelope.clinic != str(clinic):
        raise Rejected("clinic_differs", "The record belongs to another clinic.", field="clinic")
    if envelope.author != sender.username:
        raise Rejected("author_differs", "The record was made by another account.", field="author")
    if UUID(envelope.device) not in sender.devices:
        text = "The record was made on a device that this account never signed in from."
        raise Rejected("device_unknown", text, field="device", retryable=True)
    if sender.role not in kind.writers:
        raise Rejected("role_may_not", f"This role may not write a {kind.name}.", field="kind")
    supersedes = tuple(map(UUID, envelope.supersedes))
    if len(set(supersedes)) != len(supersedes):
        raise Rejected("supersedes_repeated", "A superseded record is named twice.", field="supersedes")
    if UUID(envelope.id) in supersedes:
        raise Rejected("supersedes_itself", "A record cannot supersede itself.", field="supersedes")
    value, text = _read(envelope, body)
    entry = Entry(
        id=UUID(envelope.id),
        kind=kind.name,
        patient=UUID(envelope.patient),
        author=sender.username,
        device=UUID(envelope.device),
        recorded_at=envelope.recorded_at,
        supersedes=supersedes,
        body=text,
        digest=envelope.digest,
        about=kind.about(value),
    )
    incoming = Incoming(entry=entry, body=value, sender=sender)
    kind.check(incoming)
    return incoming


def references(incoming: Incoming[Any]) -> set[UUID]:
    """Every record that this one refers to."""
    entry = incoming.entry
    return {entry.patient, *entry.supersedes, *KINDS[entry.kind].references(incoming.body)}


def admit(incoming: Incoming[Any], known: Known) -> None:
    """Rejected unless the record fits the ledger."""
    entry = incoming.entry
    if entry.patient != entry.id:
        known.find(entry.patient, kind=_anchor(entry, known), patient=entry.patient, where="patient")
    for superseded in entry.supersedes:
        known.find(superseded, kind=entry.kind, patient=entry.patient, where="supersedes")
    KINDS[entry.kind].fit(incoming, known)


def _anchor(entry: Entry, known: Known) -> str:
    """The kind of record that ``entry`` stands with: a patient, or the first version of what belongs to the clinic."""
    if KINDS[entry.kind].owner is Owner.CLINIC:
        return entry.kind
    first = known.records.get(entry.patient)
    is_of_clinic = first is not None and KINDS[first.kind].owner is Owner.CLINIC
    return first.kind if first and is_of_clinic and entry.kind == RETRACTION else "patient"


def _kind(envelope: Envelope) -> Kind[Any]:
    try:
        return KINDS[envelope.kind]
    except KeyError:
        text = "The server does not know this kind of record."
        raise Rejected("kind_unknown", text, field="kind") from None


def _read(envelope: Envelope, body: object) -> tuple[object, str]:
    try:
        value = read_body(envelope.kind, body)
    except Refused as refused:
        fault = refused.faults[0]
        raise Rejected(fault.code, fault.text, field=f"body.{fault.field}".rstrip(".")) from refused
    text = canonical(body)  # only now: what the codec took is neither endlessly deep nor full of odd numbers
    if hashlib.sha256(text.encode()).hexdigest() != envelope.digest:
        raise Rejected("digest_mismatch", "The digest does not belong to the body.", field="digest")
    return value, text
